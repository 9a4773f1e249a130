// Spanish for handing a check over: panels, what a moderator is asked, forms, progress and history.

import type { InWordsOf } from '../catalogue.ts'
import type { handOver as english } from '../en/hand-over.ts'
import { safety } from './safety.ts'

export const handOver: InWordsOf<typeof english> = {
  'command.check.start.for': 'Ofrécela a esta persona o rol, que responderá las preguntas',
  'command.check.start.anyone': 'Ofrécela a quien la tome primero en este servidor',
  'button.hands': 'Preguntar o ceder',
  'hands.title': 'Pide ayuda o cede tu comprobación',
  'hands.text':
    '¿Te has atascado en una pregunta? Un ayudante (de la moderación, o elegido por la moderación) puede responderla por ti. Mientras la pregunta está abierta, la moderación puede hacerse cargo de la comprobación, y entonces ve tus respuestas. También puedes cedérsela a otra persona. Nadie más ve tus respuestas, salvo que las muestres o que la comprobación pase a otra persona. Si se encuentra un peligro, se avisa a quien empezó la comprobación.',
  'hands.ask-about':
    'Hubo preguntas que no supiste responder. Un ayudante puede mirar una contigo; pero solo tú puedes ver que no hay una señal de peligro:',
  'hands.ask-about.choose': 'Pedir ayuda con…',
  'hands.ask-after':
    'Para preguntar a un ayudante por algo que no supiste decir: pulsa «{change}» debajo del resultado, elige esa pregunta y después «{hands}».',
  'hands.ask': 'Preguntar a un ayudante',
  'hands.unask': 'Retirar la pregunta',
  'hands.offer': 'Ceder la comprobación',
  'hands.give-back': 'Devolverla',
  'hands.share': 'Mostrar mis respuestas a quien la empezó',
  'hands.keep': 'No mostrar mis respuestas a nadie',
  'hands.return': 'Volver a la comprobación',
  'hands.shared': 'Quien empezó la comprobación puede ver tus respuestas.',
  'hands.asked':
    'Esta pregunta espera a un ayudante. Aun así puedes responderla tú. No uses ni cargues la celda mientras tanto.',
  'hands.sent-back': 'Un ayudante miró tu pregunta y escribe: {why}',
  'offered.title': 'Espera a que alguien la tome',
  'offered.text':
    'Esta comprobación se ofrece a {taker} hasta el {until}. Mientras tanto nadie puede responderla. Recupérala para seguir tú.',
  'offered.withdraw': 'Recuperarla',
  'offered.nowhere':
    'El bot no puede escribir en este canal, así que nadie habría visto la oferta. La comprobación sigue siendo tuya.',
  'taker.anyone': 'quien la tome primero',
  'panel.title': 'Una celda por comprobar',
  'panel.offer': '{starter} ofrece la comprobación de {what} a {taker}.',
  'panel.why': 'Por qué: {why}',
  'panel.until': 'Se puede tomar hasta el {until}.',
  'panel.taken': '{holder} tiene ahora la comprobación de {what}.',
  'panel.verdict': '{holder} llegó a un resultado para {what}. Solo lo ve esa persona, salvo que lo muestre.',
  'panel.back': 'La comprobación de {what} ya no se ofrece. La tiene {holder}.',
  'panel.closed': 'La comprobación de {what} está cerrada.',
  'panel.take': 'Yo la tomo',
  'panel.decline': 'Yo no',
  'panel.progress': '¿Por dónde va?',
  'help-request.title': 'Alguien se ha atascado en una pregunta',
  'help-request.text': '{holder} no sabe qué responder, en la comprobación de {what}:',
  'help-request.words': 'Sus palabras: {words}',
  'help-request.photos':
    '{count, plural, one {# foto, sin lugar, hora ni aparato.} other {# fotos, sin lugar, hora ni aparato.}}',
  'help-request.photo':
    'Foto {number} de la celda, enviada por quien se ha atascado; el bot no sabe qué se ve en ella.',
  'help-request.help': 'Responder en su lugar',
  'help-request.send-back': 'Devolver la pregunta',
  'help-request.take-over': 'Hacerse cargo de toda la comprobación',
  'help-request.over': 'Esta pregunta ya está atendida.',
  'help-request.care':
    'Responde solo lo que de verdad puedas ver. Si tú tampoco lo ves claro, dilo: nunca cuenta en contra de la celda.',
  'helping.title': 'Respondes en lugar de {holder}',
  'helping.thanks': 'Gracias. {holder} tiene tu respuesta, marcada como de un ayudante.',
  'helping.over': 'Esta pregunta ya no necesita respuesta.',
  'helping.unsure': 'Yo tampoco sabría decirlo',
  'helping.told': '{holder} recibió aviso en {channel}.',
  'helping.untold': 'El bot no pudo avisar a {holder}: dile que puede continuar con /comprobar seguir.',
  'word.helped': '{who}, un ayudante respondió tu pregunta. Tu comprobación continúa.',
  'word.result':
    '{who}, un ayudante respondió tu pregunta y tu comprobación llegó a un resultado. Si tienes la celda en la mano, déjala en el suelo, y no la toques hasta que lo hayas leído.',
  'word.unsure': `{who}, un ayudante miró tu pregunta y tampoco pudo aclararlo. Trata la celda como peligrosa: si la tienes en la mano, déjala en el suelo; si va en algo que llevas encima, quítatelo y déjalo, sin meter la mano; y no la muevas de ahí. ${safety['safety.quiet']} ${safety['safety.turns']} Tu comprobación continúa.`,
  'word.sent-back': '{who}, un ayudante miró tu pregunta. Tu comprobación continúa.',
  'word.gave-back': '{who}, la comprobación de {what} vuelve a ser tuya.',
  'word.go-on': 'Seguir',
  'progress.title': 'Por dónde va la comprobación',
  'progress.holder': 'La tiene {holder}; la empezó {starter}.',
  'progress.asking':
    '{answered, plural, =0 {Aún no hay preguntas respondidas} one {# pregunta respondida} other {# preguntas respondidas}}; como mucho, {left, number} más.',
  'progress.paused': 'En pausa tras {answered, plural, one {# respuesta} other {# respuestas}}.',
  'progress.done': 'Llegó a un resultado.',
  'progress.offered': 'Se ofrece a {taker} hasta el {until}.',
  'progress.help-request': 'Se preguntó a un ayudante.',
  'progress.answers': 'Respuestas mostradas',
  'progress.verdict': 'El resultado hasta ahora: {verdict}',
  'progress.history': 'Lo que pasó con ella',
  'progress.private':
    'Las respuestas solo las ve quien tiene la comprobación. Quien la empezó las ve si se le muestran.',
  'progress.take-over': 'Hacerse cargo, como moderación',
  'deed.offered': '{when}: {who} la ofreció a {taker}',
  'deed.took': '{when}: {who} la tomó',
  'deed.declined': '{when}: {who} no la quiso',
  'deed.withdrew': '{when}: {who} retiró la oferta',
  'deed.gave-back': '{when}: {who} la devolvió',
  'deed.asked': '{when}: {who} preguntó a un ayudante',
  'deed.unasked': '{when}: {who} retiró la pregunta',
  'deed.helped': '{when}: {who} respondió una pregunta',
  'deed.sent-back': '{when}: {who} devolvió una pregunta',
  'deed.took-over': '{when}: {who} se hizo cargo de ella',
  'deed.why': '{deed} («{why}»)',
  'waiting.held': 'en curso',
  'waiting.entry': '{what}, la tiene {holder}: {state}',
  'waiting.look': 'Ver {number}',
  'list.others': 'Comprobaciones que empezaste, en otras manos',
  'list.offered': 'Se te ofrecen',
  'answer.by-moderator': '{said} (respuesta de un ayudante)',
  'form.ask.words': '¿De qué tienes dudas?',
  'form.ask.photos': 'Fotos que ya tengas o hagas sin acercarte',
  'form.ask.photos.hint': 'Hasta diez, sin lugar, hora ni aparato. Las ve el canal de moderación hasta la respuesta.',
  'form.offer.to': 'A quién',
  'form.offer.to.hint': 'Una persona o un rol. Déjalo vacío para ofrecerla a quien la tome primero.',
  'form.why': 'Por qué',
  'form.send-back.why': '¿Qué debería saber?',
  'refusal.outside-server': 'Una comprobación solo se puede ceder en el servidor donde se empezó.',
  'refusal.offered':
    'Esta comprobación espera a que alguien la tome. Recupérala antes: /comprobar seguir muestra el botón.',
  'refusal.to-oneself': 'Ya tienes esta comprobación. Cédela a otra persona, o continúa con /comprobar seguir.',
  'refusal.nothing-to-take': 'Esta comprobación ya no se ofrece: alguien fue más rápido, o se retiró la oferta.',
  'refusal.offer-lapsed': 'Nadie tomó esta comprobación a tiempo. Pide a quien la ofreció que la ofrezca de nuevo.',
  'refusal.not-for-you': 'Esta comprobación es para otra persona. Empieza la tuya con /comprobar iniciar.',
  'refusal.nothing-to-give-back': 'Esta comprobación la empezaste tú: no hay a quién devolvérsela.',
  'refusal.nothing-to-ask': 'La comprobación no está ahora en una pregunta. Pregunta cuando te atasques en una.',
  'refusal.asked-already': 'Ya se preguntó a un ayudante por esta comprobación.',
  'refusal.not-asked': 'Esta pregunta ya no necesita respuesta.',
  'refusal.handed-too-often':
    'Esta comprobación cambió de manos {most, number} veces, que es el máximo. Continúala o ciérrala.',
  'refusal.to-a-bot': 'Un bot no puede mirar una celda. Elige una persona o un rol.',
  'refusal.not-here': 'Esa persona ya no está en este servidor. Elige a alguien que esté.',
  'refusal.to-everyone':
    'Una comprobación no se ofrece notificando a todo el mundo. Deja la elección vacía: será de quien la tome primero.',
  'refusal.two-takers': 'Elige a alguien, o a quien la tome primero, pero no ambas cosas.',
  'refusal.not-party': 'Solo ven por dónde va esta comprobación quienes tienen que ver con ella.',
  'hands.began':
    '{starter} empezó esta comprobación. Si no tienes la celda delante, pide a {starter} que mire y te lo diga. Solo quien la tiene delante puede decir si se puede tocar.',
  'hands.hot': `${safety['safety.turns']} Mantén lejos a los demás y no esperes a que te respondan.`,
  'hands.asked.unseen':
    'Tu pregunta espera en la lista de los ayudantes, pero nadie recibió aviso: este servidor no tiene canal para ello, o el bot no puede escribir en él. No se guardó ninguna foto. Si es urgente, escribe tú a la moderación.',
  'helping.again':
    'Esta respuesta sola significaría que la celda no es lo que dice ser, y en una foto es fácil contar o leer mal. Mira otra vez y responde otra vez; si repites la misma respuesta, se da por buena.',
  'helping.untold.result':
    'Avisa ya a {holder} de otra forma: hasta que lea el resultado de la comprobación, que no toque la celda. El bot no pudo avisar. El resultado se ve con /comprobar seguir.',
  'word.danger': `{who}, detente: la comprobación de {what} encontró peligro. Si tienes la celda en la mano, suéltala; si va en algo que llevas encima, quítatelo y suéltalo. Aléjate de ella y mantén lejos a los demás. ${safety['safety.turns']} Después pregunta a quien tiene la comprobación qué se encontró.`,
  'word.took-over': '{who}, {holder} se hizo cargo de la comprobación de {what} y sigue con ella.',
  'refusal.only-beside-it':
    'Ninguna foto demuestra que no hay un peligro así: solo lo puede decir quien está junto a la celda. Si ves el peligro en la foto, o te lo describen, elige la respuesta que significa peligro. Si no, responde «Yo tampoco sabría decirlo» o devuelve la pregunta.',
}

// Spanish for the server's own links: how they are shown, how moderators look after them, and why one is refused.

import type { InWordsOf } from '../catalogue.ts'
import type { links as english } from '../en/links.ts'

export const links: InWordsOf<typeof english> = {
  'links.title': 'Enlaces de este servidor',
  'links.about':
    'Los puso aquí la moderación. Primero aparece el nombre del sitio: comprueba que sea ese el que se abre. Un enlace no responde por ninguna celda en concreto.',
  'links.none': 'La moderación de este servidor aún no ha puesto ninguno.',
  'links.nowhere': 'Los enlaces son de un servidor; aquí no hay.',
  'links.dates': 'Añadido {added} · revisado {reviewed}',
  'links.unreviewed':
    '**Sin revisar desde hace más de un año**: añadido {added}, revisado por última vez {reviewed}. Las tiendas cambian de dueño; fíate menos de este enlace.',
  'links.page': 'Página {page, number} de {pages, number}',
  'links.before': 'Página anterior',
  'links.after': 'Página siguiente',
  'links.manage': 'Gestionar los enlaces',
  'links.manage.title': 'Gestionar los enlaces',
  'links.manage.count':
    '{count, plural, =0 {Aún no hay ningún enlace.} one {Hay # enlace.} other {Hay # enlaces.}} Como mucho, {most, number}.',
  'links.manage.old':
    '{count, plural, one {# no se revisa desde hace más de un año.} other {# no se revisan desde hace más de un año.}}',
  'links.manage.care':
    'Pon solo tiendas en las que mucha gente compra desde hace años. Antes de decir que un enlace sigue bien, abre la página.',
  'links.choose': 'Elige un enlace',
  'links.reviewed': 'revisado {date}',
  'links.reviewed.old': 'sin revisar desde {date}',
  'links.add': 'Añadir un enlace',
  'links.good': 'Revisado: sigue bien',
  'links.edit': 'Editar',
  'links.remove': 'Quitar',
  'links.remove.sure': '¿Quitar este enlace?',
  'links.remove.yes': 'Sí, quitarlo',
  'links.remove.no': 'Dejarlo',
  'links.back': 'Todos los enlaces',
  'links.done.add': 'Añadido.',
  'links.done.edit': 'Cambiado.',
  'links.done.still-good': 'Anotado como revisado hoy.',
  'links.done.remove': 'Quitado.',
  'links.cleaned': 'Se quitó de la dirección, porque solo dice quién envió a alguien allí: {what}.',
  'links.typed': 'Lo que escribiste:',
  'links.again': 'Escribirlo otra vez',
  'links.form.add': 'Un enlace nuevo',
  'links.form.edit': 'Editar el enlace',
  'links.form.url': 'Dirección',
  'links.form.url.hint': 'Entera, como la muestra el navegador; solo https',
  'links.form.name': 'Título',
  'links.form.name.hint': 'Qué hay allí, en pocas palabras; sin el nombre de otro sitio',
  'refusal.link-empty': 'No hay dirección. Cópiala del navegador, desde https://.',
  'refusal.link-no-scheme': 'La dirección no está entera. Cópiala del navegador, desde https://.',
  'refusal.link-unreadable':
    'Esa dirección no la podría abrir ningún navegador. Cópiala del navegador, desde https://.',
  'refusal.link-not-https': 'Aquí solo van direcciones https://, y esta empieza por {scheme}. Usa la de https.',
  'refusal.link-credentials':
    'Delante del sitio hay un usuario o una contraseña (la parte hasta «@»). Esas direcciones aparentan un sitio y llevan a otro. Usa la dirección sin esa parte.',
  'refusal.link-characters':
    'En la dirección hay algo que ninguna puede llevar: {character}. Cópiala de la barra de direcciones del navegador.',
  'refusal.link-port':
    'La dirección nombra el puerto {port}. La página de una tienda no necesita ninguno: usa la dirección sin él.',
  'refusal.link-bare-ip':
    'La dirección lleva a un simple número, {host}, y no a un nombre. Nadie puede ver de quién es. Usa la que tiene nombre.',
  'refusal.link-look-alike':
    'El sitio ({host}) está escrito con letras que pueden parecer otras. Aquí solo van letras de la «a» a la «z», cifras y guiones, porque el nombre de una tienda puede imitarse para que parezca el de otra. Si la tienda tiene una dirección sencilla, usa esa.',
  'refusal.link-internal': 'El sitio ({host}) es de una red privada. Usa una dirección que todo el mundo pueda abrir.',
  'refusal.link-host': 'El sitio ({host}) no es un nombre entero como shop.example. Cópialo del navegador.',
  'refusal.link-short':
    'La dirección es un enlace corto ({host}): nadie ve adónde lleva, y mañana puede llevar a otro sitio. Ábrelo y usa la dirección a la que llegas.',
  'refusal.link-invite':
    'Eso es una invitación a un chat o a un servidor ({host}), y no una página. Usa la dirección de la propia página.',
  'refusal.title-mentions':
    'En el título hay algo que parece una mención: {named}. Desde aquí no se notifica a nadie. Quítalo del título.',
  'refusal.link-leads-on': 'La dirección lleva dentro otra a la que envía. Ábrela y usa la dirección en la que acabas.',
  'refusal.link-too-long':
    'La dirección tiene {length, number} caracteres; como mucho, {most, number}. Quita lo que va detrás de «?».',
  'refusal.title-empty': 'No hay título. Di en pocas palabras qué hay allí.',
  'refusal.title-too-long': 'El título tiene {length, number} caracteres; como mucho, {most, number}. Acórtalo.',
  'refusal.title-names-host':
    'El título nombra {named}, pero la dirección lleva a {host}. Quita ese nombre del título.',
  'refusal.no-link': 'Este enlace ya no está. Quizá alguien lo quitó.',
  'refusal.too-many-links': 'Hay {most, number} enlaces, que es el máximo. Quita uno primero.',
  'refusal.link-there': 'Esta dirección ya está, como «{title}».',
  'refusal.form-forgotten': 'Lo que escribiste ya no se guarda. Abre el formulario otra vez.',
}

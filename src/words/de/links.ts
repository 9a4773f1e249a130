// German for the server's own links: how they are shown, how moderators look after them, and why one is refused.

import type { InWordsOf } from '../catalogue.ts'
import type { links as english } from '../en/links.ts'

export const links: InWordsOf<typeof english> = {
  'links.title': 'Links dieses Servers',
  'links.about':
    'Die Moderation hat sie hierher gestellt. Vorn steht der Name der Website: Prüf, ob sich wirklich diese öffnet. Ein Link bürgt für keine einzelne Zelle.',
  'links.none': 'Die Moderation dieses Servers hat noch keine hierher gestellt.',
  'links.nowhere': 'Links gehören zu einem Server; hier gibt es keine.',
  'links.dates': 'Dazugekommen {added} · angesehen {reviewed}',
  'links.unreviewed':
    '**Seit über einem Jahr nicht angesehen**: dazugekommen {added}, zuletzt angesehen {reviewed}. Shops wechseln den Besitzer; trau diesem Link weniger.',
  'links.page': 'Seite {page, number} von {pages, number}',
  'links.before': 'Vorige Seite',
  'links.after': 'Nächste Seite',
  'links.manage': 'Links pflegen',
  'links.manage.title': 'Links pflegen',
  'links.manage.count':
    '{count, plural, =0 {Es gibt noch keinen Link.} one {Es gibt # Link.} other {Es gibt # Links.}} Höchstens sind es {most, number}.',
  'links.manage.old':
    '{count, plural, one {# wurde seit über einem Jahr nicht angesehen.} other {# wurden seit über einem Jahr nicht angesehen.}}',
  'links.manage.care':
    'Nur Shops, bei denen viele seit Jahren kaufen. Öffne die Seite, bevor du sagst, dass sie noch gut ist.',
  'links.choose': 'Einen Link auswählen',
  'links.reviewed': 'angesehen {date}',
  'links.reviewed.old': 'nicht angesehen seit {date}',
  'links.add': 'Einen Link hinzufügen',
  'links.good': 'Angesehen: noch gut',
  'links.edit': 'Bearbeiten',
  'links.remove': 'Entfernen',
  'links.remove.sure': 'Diesen Link entfernen?',
  'links.remove.yes': 'Ja, entfernen',
  'links.remove.no': 'Behalten',
  'links.back': 'Alle Links',
  'links.done.add': 'Hinzugefügt.',
  'links.done.edit': 'Geändert.',
  'links.done.still-good': 'Als heute angesehen vermerkt.',
  'links.done.remove': 'Entfernt.',
  'links.cleaned': 'Aus der Adresse weggelassen, weil es nur sagt, wer jemanden dorthin geschickt hat: {what}.',
  'links.typed': 'Was du eingegeben hast:',
  'links.again': 'Noch einmal eingeben',
  'links.form.add': 'Ein neuer Link',
  'links.form.edit': 'Den Link bearbeiten',
  'links.form.url': 'Adresse',
  'links.form.url.hint': 'Die ganze, wie der Browser sie zeigt; nur https',
  'links.form.name': 'Titel',
  'links.form.name.hint': 'Was dort ist, in wenigen Worten; kein Name einer anderen Website',
  'refusal.link-empty': 'Da ist keine Adresse. Kopier sie aus dem Browser, ab https://.',
  'refusal.link-no-scheme': 'Die Adresse ist nicht vollständig. Kopier sie aus dem Browser, ab https://.',
  'refusal.link-unreadable':
    'Das ist keine Adresse, die ein Browser öffnen könnte. Kopier sie aus dem Browser, ab https://.',
  'refusal.link-not-https': 'Hierher kommen nur https://-Adressen, und diese beginnt mit {scheme}. Nimm die mit https.',
  'refusal.link-credentials':
    'Vor dem Namen der Website steht ein Benutzername oder Passwort (der Teil bis „@“). Solche Adressen sehen nach einer Website aus und führen zu einer anderen. Nimm die Adresse ohne diesen Teil.',
  'refusal.link-characters':
    'In der Adresse steht etwas, das in keiner Adresse stehen darf: {character}. Kopier sie aus der Adresszeile des Browsers.',
  'refusal.link-port':
    'Die Adresse nennt den Port {port}. Die Seite eines Shops braucht keinen: Nimm die Adresse ohne ihn.',
  'refusal.link-bare-ip':
    'Die Adresse führt zu einer bloßen Nummer, {host}, und nicht zu einem Namen. Niemand sieht, wem sie gehört. Nimm eine mit einem Namen.',
  'refusal.link-look-alike':
    'Der Name der Website ({host}) steht in Buchstaben, die wie andere aussehen können. Hier gehen nur a bis z, Ziffern und Bindestriche, weil sich der Name eines Shops wie der eines anderen schreiben lässt. Wenn der Shop eine schlichte Adresse hat, nimm die.',
  'refusal.link-internal': 'Die Adresse ({host}) gehört zu einem privaten Netz. Nimm eine, die alle öffnen können.',
  'refusal.link-host':
    'Der Name der Website ({host}) ist kein ganzer Name wie shop.example. Kopier die Adresse aus dem Browser.',
  'refusal.link-short':
    'Die Adresse ist ein Kurzlink ({host}): Niemand sieht, wohin er führt, und morgen kann er woandershin führen. Öffne ihn, und nimm die Adresse, bei der du ankommst.',
  'refusal.link-invite':
    'Das ist eine Einladung in einen Chat oder auf einen Server ({host}) und keine Seite. Nimm die Adresse der Seite selbst.',
  'refusal.title-mentions':
    'Im Titel steht etwas, das wie eine Erwähnung aussieht: {named}. Von hier wird niemand angepingt. Lass es im Titel weg.',
  'refusal.link-leads-on':
    'In der Adresse steckt eine zweite, zu der sie weiterführt. Öffne sie, und nimm die Adresse, bei der du ankommst.',
  'refusal.link-too-long':
    'Die Adresse hat {length, number} Zeichen; höchstens gehen {most, number}. Lass weg, was hinter dem „?“ steht.',
  'refusal.title-empty': 'Da ist kein Titel. Sag in wenigen Worten, was dort ist.',
  'refusal.title-too-long': 'Der Titel hat {length, number} Zeichen; höchstens gehen {most, number}. Kürze ihn.',
  'refusal.title-names-host':
    'Der Titel nennt {named}, die Adresse führt aber zu {host}. Lass diesen Namen aus dem Titel weg.',
  'refusal.no-link': 'Dieser Link ist nicht mehr da. Vielleicht hat ihn jemand entfernt.',
  'refusal.too-many-links': 'Es gibt {most, number} Links, mehr gehen nicht. Entferne zuerst einen.',
  'refusal.link-there': 'Diese Adresse ist schon da, als „{title}“.',
  'refusal.form-forgotten': 'Was du eingegeben hast, wird nicht mehr aufbewahrt. Öffne das Formular noch einmal.',
}

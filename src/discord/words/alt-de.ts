// German sentences for alt texts: one ICU message per fact code of the pictures, told in reading order.
export const altDe: Readonly<Record<string, string>> = {
  // how the cell is seen
  'view-side': 'Zeichnung einer aufrecht stehenden Zelle, von der Seite gesehen.',
  'view-top': 'Zeichnung vom Ende einer Zelle, gerade von vorn gesehen.',
  'view-top-angle': 'Zeichnung vom Ende einer Zelle, schräg gesehen.',
  'view-cut-away': 'Zeichnung vom oberen Teil einer Zelle, in der Mitte aufgeschnitten.',
  'end-negative': 'Es ist das flache Minusende.',

  // what is pointed at
  'point-body': 'Ein Pfeil zeigt auf die ganze Zelle.',
  'point-wrap': 'Ein Pfeil zeigt auf die Hülle.',
  'point-seam': 'Ein Pfeil zeigt auf die Naht der Hülle.',
  'point-second-wrap': 'Ein Pfeil zeigt auf die Stelle, an der unter der äußeren eine zweite Hülle läge.',
  'point-lettering': 'Eine Vergrößerung zeigt die Schichten der Seite, um zu sehen, auf welcher die Beschriftung ist.',
  'point-lettering-print': 'Eine Vergrößerung zeigt, wie die Beschriftung gedruckt ist.',
  'point-code':
    'Eine Vergrößerung zeigt die Schichten der Seite, um zu sehen, auf welcher der quadratische Punktcode ist.',
  'point-code-print': 'Eine Vergrößerung zeigt, wie der quadratische Punktcode gedruckt ist.',
  'point-top': 'Ein Pfeil zeigt auf das Plusende.',
  'point-bottom': 'Ein Pfeil zeigt auf das Minusende.',
  'point-board': 'Ein Pfeil zeigt auf die Stelle unter dem Minusende, an der eine Schutzplatine säße.',
  'point-dent': 'Ein Pfeil zeigt, wo nach Dellen zu sehen ist.',
  'point-scorch': 'Ein Pfeil zeigt, wo nach versengten oder verfärbten Stellen zu sehen ist.',
  'point-leak': 'Ein Pfeil zeigt, wo nach ausgelaufener Flüssigkeit oder Krusten zu sehen ist.',
  'point-rust': 'Ein Pfeil zeigt, wo nach Rost zu sehen ist.',
  'point-swelling': 'Ein Pfeil zeigt auf die Seite, wo nach einer Aufblähung zu sehen ist.',
  'point-wet': 'Ein Pfeil zeigt, wo nach Wasser zu sehen ist.',
  'point-heat': 'Ein Pfeil zeigt, wo sich Hitze oder Rauch zeigen würde.',
  'point-length': 'Eine Linie mit zwei Spitzen zeigt die Länge, vom Pluskontakt bis zum flachen Ende.',
  'point-diameter': 'Eine Linie mit zwei Spitzen zeigt den Durchmesser, quer über die Seite.',
  'point-ring': 'Ein Pfeil zeigt auf den Isolierring, zwischen der Hülle und dem Pluskontakt.',
  'point-legs': 'Ein Pfeil zeigt auf die Beine, auf denen der Pluskontakt steht; zähle sie.',
  'point-dimples':
    'Der Isolierring ist durchsichtig gezeichnet; ein Pfeil zeigt auf die Schulter des Zellbechers darunter, wo Vertiefungen wären.',
  'point-vent':
    'Der Pluskontakt ist abgehoben oder durchsichtig gezeichnet; ein Pfeil zeigt auf die Berstscheibe darunter.',
  'point-weld-marks': 'Ein Pfeil zeigt auf die Mitte des Pluskontakts, wo kleine Schweißpunkte wären.',
  'point-welds': 'Ein Pfeil zeigt auf den Pol, wo Schweißnarben oder Reste von Nickelband wären.',
  'point-terminal': 'Ein Pfeil zeigt auf die Fläche des Pols.',
  'point-can': 'Ein Pfeil zeigt auf die Wand des Zellbechers.',

  // hazards
  'heat-none': 'Keine Hitze, kein Rauch.',
  'heat-hot': 'Von der Zelle steigt Hitze auf.',
  'heat-smoke': 'Von der Zelle steigt Rauch auf.',
  'leak-none': 'Nichts ausgelaufen.',
  'leak-top': 'Am Plusende ist Flüssigkeit ausgelaufen.',
  'leak-bottom': 'Am Minusende ist Flüssigkeit ausgelaufen.',
  swollen: 'Die Seite wölbt sich nach außen.',
  'no-swollen': 'Die Seite ist gerade.',
  'dent-none': 'Keine Delle.',
  'dent-side': 'Eine Delle mitten in der Seite.',
  'dent-top-edge': 'Eine Delle nahe dem oberen Rand.',
  'dent-bottom-edge': 'Der untere Rand ist eingedrückt.',
  scorched: 'Ein dunkler, versengter Fleck an der Seite.',
  'no-scorched': 'Nichts ist versengt.',
  'rust-none': 'Kein Rost.',
  'rust-top': 'Rost am Plusende.',
  'rust-bottom': 'Rost am Minusende.',
  wet: 'Wassertropfen auf der Zelle.',
  'no-wet': 'Die Zelle ist trocken.',
  'wrap-whole': 'Die Hülle ist heil.',
  'wrap-torn': 'Die Hülle ist oben eingerissen; Metall ist zu sehen.',
  'wrap-missing': 'Es gibt keine Hülle; der Zellbecher aus Metall liegt bloß.',
  'ring-whole': 'Der Isolierring ist heil.',
  'ring-torn': 'Der Isolierring ist durchgerissen.',
  'ring-missing': 'Der Isolierring fehlt; an seiner Stelle ist Metall zu sehen.',
  'ring-second': 'Zwei Isolierringe liegen aufeinander.',

  // tells
  'second-wrap-none': 'Nur eine Hülle.',
  'second-wrap-clear': 'Unter der äußeren Hülle liegt eine zweite, durchsichtige.',
  'second-wrap-coloured': 'Unter der äußeren Hülle liegt eine zweite, farbige.',
  'welds-none': 'Keine Schweißspuren am Pol.',
  'welds-scars': 'Eingebrannte Krater alter Schweißpunkte am Pol.',
  'welds-nickel': 'Ein abgerissenes Stück Nickelband ist am Pol angeschweißt.',
  'terminal-clean': 'Der Pol ist glatt.',
  'terminal-plated': 'Der Pol ist überlackiert oder überzogen, bis über seinen Rand hinaus.',
  'terminal-ground': 'Der Pol hat parallele Schleifspuren.',
  legs: 'Der Pluskontakt steht auf {n, plural, one {# Bein} other {# Beinen}}.',
  'contact-closed': 'Der Pluskontakt hat keine Beine und keine Lücken.',
  dimples:
    '{n, plural, =0 {Keine Vertiefung} one {# Vertiefung} other {# Vertiefungen}} in der Schulter des Zellbechers.',
  'vent-plain': 'Die Berstscheibe hat einen feinen Kreis.',
  'vent-lines': 'Die Berstscheibe zeigt {n, plural, one {# strahlenförmige Linie} other {# strahlenförmige Linien}}.',
  'vent-button': 'Die Berstscheibe hat in der Mitte einen erhabenen Knopf.',
  'vent-smooth': 'Die Berstscheibe ist glatt.',
  'weld-marks':
    '{n, plural, =0 {Kein kleiner Schweißpunkt} one {# kleiner Schweißpunkt} other {# kleine Schweißpunkte}} auf dem Pluskontakt.',
  'lettering-none': 'Keine Beschriftung.',
  'lettering-can': 'Die Beschriftung ist auf dem Zellbecher aus Metall und scheint durch die Hülle.',
  'lettering-wrap': 'Die Beschriftung ist auf der äußeren Hülle; der Zellbecher darunter ist leer.',
  'lettering-second-wrap':
    'Die Beschriftung ist auf einer durchsichtigen zweiten Hülle unter der äußeren; der Zellbecher darunter ist leer.',
  'lettering-print-sharp': 'Die Beschriftung ist scharf.',
  'lettering-print-faint': 'Die Beschriftung ist blass.',
  'lettering-print-blurred': 'Die Beschriftung ist verschwommen.',
  'lettering-print-broken': 'Die Beschriftung ist von Lücken unterbrochen.',
  'code-none': 'Kein quadratischer Punktcode.',
  'code-wrap': 'Auf der Hülle ist ein quadratischer Punktcode.',
  'code-can': 'Auf dem Zellbecher aus Metall ist ein quadratischer Punktcode.',
  'code-print-clear': 'Die Punkte des Codes sind klar.',
  'code-print-faint': 'Die Punkte des Codes sind blass.',
  'code-print-dark': 'Die Punkte des Codes sind dunkel und berühren sich.',
  'code-print-smeared': 'Die Punkte des Codes sind verschmiert.',
  'code-print-solid': 'Der Code ist fast eine volle Fläche.',
  'code-kind-edge-l': 'Zwei Ränder des Codes sind durchgezogen und bilden ein L.',
  'code-kind-corner-squares': 'Der Code hat Quadrate in drei Ecken.',
  'top-flat': 'Die Oberseite ist flach.',
  'top-button': 'Die Oberseite ist ein erhabener Knopf.',
  board: 'Eine Schutzplatine macht die Zelle länger: eine Stufe am Minusende und ein Streifen die Seite hinab.',
  'no-board': 'Keine Schutzplatine: Die Seite ist bis zum Ende eben.',
  seam: 'Die Hülle hat eine Naht.',
  'no-seam': 'An der Hülle ist keine Naht zu sehen.',
  format: 'Format {format}.',
  'wrap-colour-green': 'Grüne Hülle.',
  'wrap-colour-blue': 'Blaue Hülle.',
  'wrap-colour-red': 'Rote Hülle.',
  'wrap-colour-yellow': 'Gelbe Hülle.',
  'wrap-colour-orange': 'Orangefarbene Hülle.',
  'wrap-colour-pink': 'Rosa Hülle.',
  'wrap-colour-purple': 'Lila Hülle.',
  'wrap-colour-turquoise': 'Türkisfarbene Hülle.',
  'wrap-colour-brown': 'Braune Hülle.',
  'wrap-colour-grey': 'Graue Hülle.',
  'wrap-colour-white': 'Weiße Hülle.',
  'wrap-colour-black': 'Schwarze Hülle.',
  'wrap-colour-clear': 'Durchsichtige Hülle.',

  // a family's reference, a verdict
  reference: '{n, plural, one {# Ansicht} other {# Ansichten}} einer Zelle, wie sie aussehen sollte.',
  verdict: 'Ergebnis: {word}.',
  'verdict-mark': 'Markierung {n}: {text}',
  'verdict-reason': '{text}',
  'verdict-caution': 'Vorsicht: {text}',

  // options side by side
  options: '{n, plural, one {# Zeichnung} other {# Zeichnungen}} zum Vergleichen.',
  option: '{letter}: {text}',
  'option-named': '{letter}: {label}.',
  'option-open': '{letter}: ein Fragezeichen.',

  // how to measure
  'measuring-calliper-diameter':
    'So misst man den Durchmesser: Die Schnäbel des Messschiebers liegen rechtwinklig quer über der Mitte der Hülle.',
  'measuring-calliper-length':
    'So misst man die Länge: ein Schnabel an jedem Ende, mit einem Stück Papier zwischen Metall und Schnabel, damit nichts von einem Ende zum anderen leitet.',
  'measuring-rest-before-voltage':
    'Drei Schritte: die Zelle aus dem Ladegerät nehmen, sie eine Stunde oder länger ruhen lassen, dann das Messgerät an ihre Enden halten.',
  'measuring-meter-on-ends':
    'Ein Messgerät, auf Gleichspannung gestellt: die rote Prüfspitze auf dem Pluskontakt, die schwarze auf dem flachen Ende.',
  'measuring-two-wire-four-wire':
    'Links: ein Messgerät mit zwei Leitungen, das die eigenen Leitungen mitmisst. Rechts, als der bessere Weg markiert: ein Messgerät mit vier Leitungen, zwei, die Strom führen, und zwei, die messen.',
  'measuring-scale': 'Die Zelle liegt allein und ruhig auf einer Waage.',
  'measuring-safe-bench':
    'Ein sicherer Platz: eine Fläche aus Stein, die Zelle in einer Halterung, ein Eimer Sand griffbereit, nichts Brennbares in der Nähe, und jemand, der die ganze Zeit zusieht.',
  'measuring-lamp-at-an-angle':
    'Eine Lampe scheint schräg zwischen die Beine des Pluskontakts; ein Auge sieht von der anderen Seite hinein.',
  'measuring-keep-apart':
    'Die Zelle liegt allein in Sand, in einer lose abgedeckten Metallkiste, mit Klebeband über beiden Enden.',
  caption: '{text}',

  // charts
  'chart-title': '{title}.',
  'curve-empty': 'Ein Entladediagramm ohne Messwerte.',
  curve:
    'Entladekurve: Die Spannung fällt von {from, number, ::.00} V auf {to, number, ::.00} V; die Entladeschlussspannung ist {cutOff, number, ::.0#} V.',
  'curve-result':
    'Gemessene Kapazität {value, number, ::precision-integer} mAh, plus oder minus {u, number, ::precision-integer} mAh.',
  'curve-at-least':
    'Die Entladung hat früh aufgehört: Die Kapazität ist mindestens {value, number, ::precision-integer} mAh, plus oder minus {u, number, ::precision-integer} mAh.',
  'curve-minimum': 'Der Mindestwert für diese Modellreihe ist {value, number, ::precision-integer} mAh.',
  'curve-temperature':
    'Die Temperatur beginnt bei {from, number, ::precision-integer} °C und erreicht {most, number, ::precision-integer} °C.',
  'curve-gaps': '{n, plural, one {# Abschnitt} other {# Abschnitte}} ohne Messwerte.',
  trend: 'Nicht bestandene Prüfungen Woche für Woche, über {n, plural, one {# Woche} other {# Wochen}}.',
  'trend-last': 'Letzte gezeigte Woche, {name}: {failed, number} nicht bestanden.',
  'trend-last-expected':
    'Letzte gezeigte Woche, {name}: {failed, number} nicht bestanden, {expected, number, ::.#} erwartet.',
  'trend-alarm': 'Als Anstieg markiert: {name}, mit {failed, number} nicht bestandenen.',
  'trend-quiet': 'Keine Woche ist als Anstieg markiert.',
  'trend-withheld': '{n, plural, one {# Woche wird} other {# Wochen werden}} nicht gezeigt.',
  'release-row': '{label}: {share, number, percent}, Bereich {low, number, percent} bis {high, number, percent}.',
  'release-withheld': '{label}: nicht gezeigt.',
  sheet: 'Eine Übersicht mit {n, plural, one {# Bild} other {# Bildern}}.',
}

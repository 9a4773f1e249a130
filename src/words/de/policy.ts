// German for the page that a host links as privacy policy and terms of use.

import type { InWordsOf } from '../catalogue.ts'
import type { policy as english } from '../en/policy.ts'

export const policy: InWordsOf<typeof english> = {
  'policy.title': 'Cellwary auf Discord: Datenschutz und Nutzungsbedingungen',
  'policy.run-by': 'Wer diesen Bot betreibt',
  'policy.delete.title': 'Was du tun kannst',
  'policy.delete':
    'Schreib dem Bot /datenschutz: Er zeigt, was unter deiner ID gespeichert ist, löscht es sofort und lässt dich festlegen, dass du nicht mitgezählt wirst.',
  'policy.terms.title': 'Nutzungsbedingungen',
  'policy.terms.unproven':
    'Der Bot hilft, gefälschte Zellen an dem zu erkennen, was man sehen und messen kann. Über die, die eine Zelle verkauft haben, sagt er nichts, und eine Gewähr gibt es nicht.',
  'policy.terms.fair':
    'Benutze den Bot nicht, um jemanden zu beschuldigen oder zu belästigen, und versuch nicht, ihn anderen unbrauchbar zu machen.',
}

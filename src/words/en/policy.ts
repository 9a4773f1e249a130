// English for the page that a host links as privacy policy and terms of use.
export const policy = {
  'policy.title': 'Cellwary on Discord: privacy and terms of use',
  'policy.run-by': 'Who runs this bot',
  'policy.delete.title': 'What you can do',
  'policy.delete':
    'Write /privacy to the bot: it shows what is kept under your id, deletes it at once, and lets you say that you are not to be counted.',
  'policy.terms.title': 'Terms of use',
  'policy.terms.unproven':
    'The bot helps to spot counterfeit cells by what can be seen and measured. It says nothing about whoever sold a cell, and it comes without any warranty.',
  'policy.terms.fair': 'Do not use the bot to accuse or trouble anybody, and do not try to stop others from using it.',
} as const

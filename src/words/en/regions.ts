// English for whom to turn to, region by region; what is from memory says so.
import { safety } from './safety.ts'

// Where a suspect cell goes is asked before it is moved, in each region alike.
const ask =
  'not with household waste or recycling collected at home. Ask your waste authority or a recycler that takes damaged lithium cells before you move it'
const then = `${safety['safety.quiet.wait']} ${safety['safety.quiet.keep']} If the authority or recycler tells you to bring it, and only if all of those conditions hold, put it into a bag of its own`

export const regions = {
  'region.us': 'United States',
  'region.uk': 'United Kingdom',
  'region.eu': 'European Union',
  'region.ca': 'Canada',
  'region.au': 'Australia',
  'region.other': 'Elsewhere',
  'region.us.text': `- Emergency: 911\n- Report: saferproducts.gov or 1-800-638-2772 (US Consumer Product Safety Commission); imports also to customs, page “e-Allegations”\n- Hand in: ${ask}. ${then} (tape and a bag: US Environmental Protection Agency, as others report it)\n- Money: dispute a card payment in writing within 60 days of the first bill (as others report it)`,
  'region.uk.text': `- Emergency: 999\n- Report: consumer helpline 0808 223 1133, which passes it on to Trading Standards (a council’s page)\n- Hand in: ${ask}. ${then} (common practice)\n- Money: 30 days to reject; card claim under section 75 for over £100 and up to £30,000; chargeback (as others report it)`,
  'region.eu.text': `- Emergency: 112\n- Report: the market surveillance authority of your country; the Safety Gate takes reports from consumers (Regulation (EU) 2023/988, as others report it)\n- Hand in: ${ask}. ${then} (common practice). Waste batteries are collected separately; many shops that sell batteries take sound ones back (from memory)\n- Money: 14 days to withdraw when bought online; at least 2 years of legal guarantee; if the fault shows within the first year, it counts as having been there from the start (European Commission, as others report it)`,
  'region.ca.text': `- Emergency: 911\n- Report: Health Canada takes reports on consumer products (from memory)\n- Hand in: ${ask}. ${then} (common practice)\n- Money: contact your card issuer as soon as you can; then the consumer office of your province (from memory)`,
  'region.au.text': `- Emergency: 000\n- Report: the Australian Competition and Consumer Commission, product safety (from memory)\n- Hand in: ${ask}. ${then} (common practice)\n- Money: contact your card issuer as soon as you can; then the consumer office of your state (from memory)`,
  'region.other.text': `- Emergency: the number of your country\n- Report: your consumer protection, product safety or customs authority (common practice)\n- Hand in: ${ask}. ${then} (common practice)\n- Money: use the buyer protection of the marketplace or card as soon as you can; there are time limits (common practice)`,
} as const

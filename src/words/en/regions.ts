// English for whom to turn to, region by region; what is from memory says so.
export const regions = {
  'region.us': 'United States',
  'region.uk': 'United Kingdom',
  'region.eu': 'European Union',
  'region.ca': 'Canada',
  'region.au': 'Australia',
  'region.other': 'Elsewhere',
  'region.us.text':
    '- Emergency: 911 (from memory)\n- Report: saferproducts.gov or 1-800-638-2772 (US Consumer Product Safety Commission); imports also to customs, page “e-Allegations”\n- Hand in: not into the trash or kerbside recycling; tape the ends, bag it singly, to a collection point for lithium cells (US Environmental Protection Agency, as relayed)\n- Money: a written card dispute within 60 days of the first bill (as relayed)',
  'region.uk.text':
    '- Emergency: 999 (from memory)\n- Report: consumer helpline 0808 223 1133, which passes it on to Trading Standards (a council’s page)\n- Hand in: ask your council where damaged lithium cells go (common practice)\n- Money: 30 days to reject; card claim under section 75 from £100 to £30,000; chargeback (as relayed)',
  'region.eu.text':
    '- Emergency: 112 (from memory)\n- Report: the market surveillance authority of your country; the Safety Gate takes reports from consumers (Regulation (EU) 2023/988, as relayed)\n- Hand in: waste batteries are collected separately; many shops that sell batteries take them back (from memory). Not every one takes damaged cells: ask your waste authority\n- Money: 14 days to withdraw when bought online; 2 years of guarantee, a defect is presumed in the first (European Commission, as relayed)',
  'region.ca.text':
    '- Emergency: 911 (from memory)\n- Report: Health Canada takes reports on consumer products (from memory)\n- Hand in: ask your municipality or a battery recycler where damaged lithium cells go (common practice)\n- Money: your card issuer, soon; the consumer office of your province (from memory)',
  'region.au.text':
    '- Emergency: 000 (from memory)\n- Report: the Australian Competition and Consumer Commission, product safety (from memory)\n- Hand in: ask your council or a battery recycler where damaged lithium cells go (common practice)\n- Money: your card issuer, soon; the consumer office of your state (from memory)',
  'region.other.text':
    '- Emergency: the number of your country\n- Report: your consumer protection, product safety or customs authority (common practice)\n- Hand in: ask your waste authority or fire service where damaged lithium cells go (common practice)\n- Money: the marketplace’s or card’s own protection, soon; time limits run (common practice)',
} as const

/**
 * Currencies in use, by code.
 * @source ISO 4217, list one as published 2024-06-25; metals, funds and units of account left out
 */
const CODES = new Set(
  `AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CLP CNY
COP CRC CUP CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR
IQD IRR ISK JMD JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP MRU MUR
MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD
SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH UGX USD UYU UZS VES VND VUV WST XAF XCD XOF
XPF YER ZAR ZMW ZWG`.split(/\s+/),
);

/** Codes that are no word, so that they count in small letters too. */
const PLAIN_CODES = new Set(
  'aud brl cad chf clp cny czk dkk eur gbp hkd huf ils inr isk jpy krw mxn myr nok nzd php pln ron sek sgd thb twd uah usd zar'.split(
    ' ',
  ),
);

const DOLLARS = ['USD', 'CAD', 'AUD', 'NZD'];
const CROWNS = ['SEK', 'NOK', 'DKK', 'ISK'];
const YUAN_OR_YEN = ['JPY', 'CNY'];

/** Signs and words, each with the currencies it may mean. Common usage, no source. */
const NAMES: Readonly<Record<string, readonly string[]>> = {
  '€': ['EUR'],
  euro: ['EUR'],
  euros: ['EUR'],
  '£': ['GBP'],
  pound: ['GBP'],
  pounds: ['GBP'],
  quid: ['GBP'],
  sterling: ['GBP'],
  $: DOLLARS,
  dollar: DOLLARS,
  dollars: DOLLARS,
  bucks: DOLLARS,
  us$: ['USD'],
  ca$: ['CAD'],
  c$: ['CAD'],
  au$: ['AUD'],
  a$: ['AUD'],
  nz$: ['NZD'],
  hk$: ['HKD'],
  s$: ['SGD'],
  r$: ['BRL'],
  '¥': YUAN_OR_YEN,
  yen: ['JPY'],
  yuan: ['CNY'],
  '₹': ['INR'],
  rupees: ['INR', 'PKR', 'LKR', 'NPR'],
  kr: CROWNS,
  kroner: ['NOK', 'DKK'],
  kronor: ['SEK'],
  francs: ['CHF', 'XOF', 'XAF', 'XPF'],
  zloty: ['PLN'],
  zł: ['PLN'],
  kč: ['CZK'],
  koruna: ['CZK'],
  forint: ['HUF'],
  rand: ['ZAR'],
  lei: ['RON'],
  pesos: ['MXN', 'ARS', 'CLP', 'COP'],
};

/** Hundredths of a currency. */
const PARTS: Readonly<Record<string, readonly string[]>> = {
  p: ['GBP'],
  pence: ['GBP'],
  cent: ['EUR', ...DOLLARS],
  cents: ['EUR', ...DOLLARS],
};

/** Whose dollars, crowns or francs. */
const COUNTRIES: Readonly<Record<string, string>> = {
  us: 'USD',
  american: 'USD',
  canadian: 'CAD',
  australian: 'AUD',
  aussie: 'AUD',
  zealand: 'NZD',
  singapore: 'SGD',
  swedish: 'SEK',
  norwegian: 'NOK',
  danish: 'DKK',
  icelandic: 'ISK',
  swiss: 'CHF',
};

/** The currencies that a word, sign or code may name; undefined for any other word. */
export function currenciesNamed(word: string): readonly string[] | undefined {
  const small = word.toLowerCase();
  if (Object.hasOwn(NAMES, small)) return NAMES[small];
  return CODES.has(word) || PLAIN_CODES.has(small) ? [word.toUpperCase()] : undefined;
}

/** The same of a word for hundredths: `pence`. */
export const hundredthsNamed = (word: string): readonly string[] | undefined =>
  Object.hasOwn(PARTS, word) ? PARTS[word] : undefined;

/** The currency of a country's people before a word that several share: `canadian dollars`. */
export const countryCurrency = (word: string): string | undefined =>
  Object.hasOwn(COUNTRIES, word) ? COUNTRIES[word] : undefined;

import { z } from "zod";

/** Codes of money one pays with, from ISO 4217 List One; from memory, and held against the list of the Unicode CLDR by a test. */
const codes = new Set(
  `AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BHD BIF BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CLP CNY COP CRC CUP
  CVE CZK DJF DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GNF GTQ GYD HKD HNL HTG HUF IDR ILS INR IQD IRR ISK JMD
  JOD JPY KES KGS KHR KMF KPW KRW KWD KYD KZT LAK LBP LKR LRD LSL LYD MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN
  NAD NGN NIO NOK NPR NZD OMR PAB PEN PGK PHP PKR PLN PYG QAR RON RSD RUB RWF SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN
  SVC SYP SZL THB TJS TMT TND TOP TRY TTD TWD TZS UAH UGX USD UYU UZS VES VND VUV WST XAF XCD XOF XPF YER ZAR ZMW`.split(
    /\s+/,
  ),
);

/** An ISO 4217 code of money in use. */
export const Currency = z
  .string()
  .regex(/^[A-Z]{3}$/, "an ISO 4217 code such as USD")
  .refine((code) => codes.has(code), "a currency in use by ISO 4217, such as USD or EUR");
export type Currency = z.infer<typeof Currency>;

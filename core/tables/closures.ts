/**
 * Stock closure lengths: inches, and the centimetre label they are sold under. The labels are trade pairs, not
 * conversions (a 9 in closure is 22.86 cm). From memory of trade lists; no published list was found.
 */
export const STOCK_CLOSURES = [
  { inches: 4, labelCm: 10 },
  { inches: 5, labelCm: 12 },
  { inches: 6, labelCm: 15 },
  { inches: 7, labelCm: 18 },
  { inches: 8, labelCm: 20 },
  { inches: 9, labelCm: 23 },
  { inches: 10, labelCm: 25 },
  { inches: 12, labelCm: 30 },
  { inches: 14, labelCm: 35 },
  { inches: 16, labelCm: 40 },
  { inches: 18, labelCm: 45 },
  { inches: 20, labelCm: 50 },
  { inches: 22, labelCm: 55 },
  { inches: 24, labelCm: 60 },
] as const;

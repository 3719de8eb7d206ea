/**
 * Sizes of adults, mean and standard deviation in mm: 1,986 women and 4,082 men aged 17 to 58, computed from the
 * individual records. Serving soldiers, so girths of limbs run firm.
 * @source 2012 US Army anthropometric survey, technical report NATICK/TR-15/007 (public)
 */
export const ADULT_SIZES = {
  women: {
    head: { meanMm: 561.1, sdMm: 19.4 },
    hand: { meanMm: 186.6, sdMm: 8.8 },
    hand_length: { meanMm: 181.1, sdMm: 10.1 },
    palm_length: { meanMm: 108.7, sdMm: 5.9 },
    wrist: { meanMm: 154.8, sdMm: 7.8 },
    forearm: { meanMm: 264.1, sdMm: 18.5 },
    calf: { meanMm: 373.3, sdMm: 28.5 },
    ankle: { meanMm: 215.7, sdMm: 14.9 },
    heel_ankle: { meanMm: 310.3, sdMm: 15.3 },
  },
  men: {
    head: { meanMm: 574.4, sdMm: 16.0 },
    hand: { meanMm: 212.3, sdMm: 10.2 },
    hand_length: { meanMm: 193.3, sdMm: 9.9 },
    palm_length: { meanMm: 116.5, sdMm: 6.2 },
    wrist: { meanMm: 175.9, sdMm: 9.0 },
    forearm: { meanMm: 310.1, sdMm: 22.0 },
    calf: { meanMm: 392.3, sdMm: 29.7 },
    ankle: { meanMm: 229.3, sdMm: 14.6 },
    heel_ankle: { meanMm: 343.5, sdMm: 16.6 },
  },
} as const;

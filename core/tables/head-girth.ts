/**
 * Head girth of children from birth to five years: median M in cm and coefficient of variation S, so that a head z
 * deviations from the median is M·(1 + S·z).
 * @source WHO Child Growth Standards (2007), head circumference-for-age, the daily LMS table at round(months·30.4375)
 */
export const HEAD_GIRTH = [
  { months: 0, boys: { medianCm: 34.4618, spread: 0.03686 }, girls: { medianCm: 33.8787, spread: 0.03496 } },
  { months: 1, boys: { medianCm: 37.2435, spread: 0.03135 }, girls: { medianCm: 36.5163, spread: 0.03211 } },
  { months: 2, boys: { medianCm: 39.1349, spread: 0.02997 }, girls: { medianCm: 38.258, spread: 0.03168 } },
  { months: 3, boys: { medianCm: 40.5008, spread: 0.02918 }, girls: { medianCm: 39.521, spread: 0.0314 } },
  { months: 4, boys: { medianCm: 41.6401, spread: 0.02868 }, girls: { medianCm: 40.5895, spread: 0.03119 } },
  { months: 5, boys: { medianCm: 42.5524, spread: 0.02837 }, girls: { medianCm: 41.454, spread: 0.03102 } },
  { months: 6, boys: { medianCm: 43.3393, spread: 0.02817 }, girls: { medianCm: 42.2079, spread: 0.03087 } },
  { months: 8, boys: { medianCm: 44.5384, spread: 0.02796 }, girls: { medianCm: 43.3753, spread: 0.03063 } },
  { months: 9, boys: { medianCm: 45.0007, spread: 0.02792 }, girls: { medianCm: 43.8309, spread: 0.03053 } },
  { months: 10, boys: { medianCm: 45.4004, spread: 0.0279 }, girls: { medianCm: 44.2273, spread: 0.03044 } },
  { months: 12, boys: { medianCm: 46.0637, spread: 0.02789 }, girls: { medianCm: 44.894, spread: 0.03027 } },
  { months: 15, boys: { medianCm: 46.809, spread: 0.02792 }, girls: { medianCm: 45.6582, spread: 0.03005 } },
  { months: 18, boys: { medianCm: 47.3718, spread: 0.028 }, girls: { medianCm: 46.2431, spread: 0.02987 } },
  { months: 21, boys: { medianCm: 47.8399, spread: 0.0281 }, girls: { medianCm: 46.7375, spread: 0.02972 } },
  { months: 24, boys: { medianCm: 48.2494, spread: 0.02821 }, girls: { medianCm: 47.1799, spread: 0.02958 } },
  { months: 30, boys: { medianCm: 48.9347, spread: 0.02847 }, girls: { medianCm: 47.9336, spread: 0.02933 } },
  { months: 36, boys: { medianCm: 49.4619, spread: 0.02871 }, girls: { medianCm: 48.5106, spread: 0.02912 } },
  { months: 42, boys: { medianCm: 49.8737, spread: 0.02893 }, girls: { medianCm: 48.9621, spread: 0.02894 } },
  { months: 48, boys: { medianCm: 50.2115, spread: 0.02912 }, girls: { medianCm: 49.3321, spread: 0.02878 } },
  { months: 54, boys: { medianCm: 50.4931, spread: 0.0293 }, girls: { medianCm: 49.647, spread: 0.02863 } },
  { months: 60, boys: { medianCm: 50.7372, spread: 0.02945 }, girls: { medianCm: 49.9225, spread: 0.0285 } },
] as const;

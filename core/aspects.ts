/** What makers call the sides of a piece in everyday words. Asks refer to these, so that each is listed once. */
export const aspects = {
  wide: ['wide', 'width', 'across', 'broad', 'breadth'],
  tall: ['tall', 'high', 'height', 'deep', 'depth'],
  long: ['long', 'length'],
  round: ['around', 'round', 'circumference', 'girth'],
  diameter: ['diameter', 'diam', 'dia'],
  thick: ['thick', 'thickness'],
  head: ['head', 'heads'],
  closure: ['closure', 'closures', 'zip', 'zipper', 'zips', 'zippers'],
  ring: ['ring', 'rings'],
} as const;

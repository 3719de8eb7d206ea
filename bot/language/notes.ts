const NOTE = /(?:^|[\s,;.])notes?\s*[:=]\s*(\S[\s\S]*)$/i;
const MOST_CHARACTERS = 200;

/** The maker's note at the end of a text, and where its words begin: `note: new oil`. */
export function noteIn(text: string): { note: string; start: number } | undefined {
  const found = NOTE.exec(text);
  const note = found?.[1]?.trim().slice(0, MOST_CHARACTERS);
  return found === null || note === undefined ? undefined : { note, start: found.index };
}

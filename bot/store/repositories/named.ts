/** A name as it was said, and the key under which differently cased tellings of it are one. */
export function named(said: string): { name: string; name_key: string } {
  const name = said.trim();
  return { name, name_key: name.toLowerCase() };
}

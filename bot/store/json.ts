import { z } from 'zod';

/** A column of JSON text under version 1: `text` writes a value, `value` reads it back and throws on any other shape. */
export function jsonColumn<T>(shape: z.ZodType<T>): { text: (value: T) => string; value: (text: string) => T } {
  const stored = z.object({ v: z.literal(1), value: shape });
  return {
    text: (value) => JSON.stringify({ v: 1, value }),
    value: (text) => stored.parse(JSON.parse(text)).value as T,
  };
}

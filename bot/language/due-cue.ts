const CUE =
  /\b(?:by|for|due|on|until|before):?\s+(?:the\s+)?(?:\d{1,2}(?:st|nd|rd|th)?\s+(?:of\s+)?[a-z]{3,}|[a-z]{3,9}\.?\s+\d{1,2}|monday|tuesday|wednesday|thursday|friday|saturday|sunday|mon|tue|wed|thu|fri|sat|sun|tomorrow|today|tonight|next|this|end|weekend|\d{4}-\d|\d{1,2}[./]\d)/i;

/** True when a text holds a word that may lead to a date; only then is the date library worth loading. */
export const hasDueCue = (text: string): boolean => CUE.test(text);

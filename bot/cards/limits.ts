/** Limits of the platform that a card can come near. Source: docs.slack.dev, Block Kit reference. */
export const LIMITS = {
  blocks: 50,
  /** Our own: a phone's notification shows this much. */
  lead: 80,
  headerText: 150,
  contextElements: 10,
  actionElements: 25,
  buttonText: 75,
  buttonValue: 2000,
  plainText: 3000,
  messageText: 4000,
  tableRows: 100,
  /** All cells of a table together. */
  tableText: 10_000,
  modalTitle: 24,
  privateMetadata: 3000,
  inputHint: 2000,
  /** Our own: what is read at a glance beside a field. */
  fault: 300,
  optionText: 75,
  selectOptions: 100,
  radioOptions: 10,
} as const;

/** A text no longer than `most` characters; what was cut off is shown by an ellipsis. */
export const shortened = (text: string, most: number): string =>
  text.length <= most ? text : `${text.slice(0, most - 1).trimEnd()}…`;

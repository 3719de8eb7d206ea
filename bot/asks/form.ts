import { z } from 'zod';

/** The forms there are. A request that can be filled in has one. */
export const FormId = z.enum(['gauge', 'plan', 'reading', 'lost_count', 'rates', 'share']);
export type FormId = z.infer<typeof FormId>;

/** What the fields of a form hold, by their ids: text as it was typed, or the id of an option. Blank is ''. */
export const FormValues = z.record(z.string(), z.string());
export type FormValues = z.infer<typeof FormValues>;

/** A form as it was sent. */
export type FormSent = { id: FormId; values: FormValues };

import { z } from 'zod';
import { jsonColumn } from './json.js';
import type { Address, Body } from './ports.js';

const madeAnew = { channel: z.string(), threadTs: z.string().optional(), ifThere: z.literal(true).optional() };

/** The two JSON columns of an outbox row: where it goes and what it says. */
export const addressJson = jsonColumn<Address>(
  z.discriminatedUnion('to', [
    z.object({ to: z.literal('post'), channel: z.string(), threadTs: z.string().optional() }),
    z.object({ to: z.literal('ephemeral'), channel: z.string(), user: z.string(), threadTs: z.string().optional() }),
    z.object({ to: z.literal('response'), url: z.string(), inChannel: z.boolean().optional() }),
    z.object({ to: z.literal('home'), user: z.string(), channel: z.string() }),
    z.object({ to: z.literal('card'), ts: z.string(), ...madeAnew }),
    z.object({ to: z.literal('again'), row: z.string(), ...madeAnew }),
  ]),
);
export const bodyJson = jsonColumn<Body>(z.object({ text: z.string(), blocks: z.array(z.unknown()) }));

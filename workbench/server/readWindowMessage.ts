import { z } from 'zod';
import type { FromWindow } from './messageTypes.ts';

const selection = z.object({ sheet: z.string(), range: z.string() });

const message = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('change'),
    batch: z.number(),
    madeAt: z.number(),
    mutations: z.array(z.object({ id: z.string(), params: z.unknown() })).min(1),
  }),
  z.object({
    kind: z.literal('call'),
    call: z.number(),
    name: z.string(),
    args: z.array(z.unknown()),
    selection,
  }),
  z.object({ kind: z.literal('answer'), id: z.number(), button: z.string() }),
  z.object({ kind: z.literal('look'), sheet: z.string(), cell: z.string() }),
]);

/** Reads what a window sent; undefined when it is none of ours. */
export function readWindowMessage(text: string): FromWindow | undefined {
  try {
    const read = message.safeParse(JSON.parse(text));
    return read.success ? read.data : undefined;
  } catch {
    return undefined;
  }
}

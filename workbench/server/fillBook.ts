import type { Host } from '../host/Host.ts';

/** The add-on's menu functions that make a book, in their order. */
const STEPS = {
  layout: [['Laying out the workbook…', 'setUpWorkbook']],
  demo: [
    ['Laying out the workbook…', 'setUpWorkbook'],
    ['Filling in the demo shop…', 'fillDemoShop'],
  ],
} as const;

/**
 * Makes a new book as a person would: by choosing the add-on's menu items and closing their reports.
 *
 * @throws Error with the add-on's sentence when an item fails
 */
export async function fillBook(
  host: Host,
  fill: 'layout' | 'demo',
  say: (text: string) => void,
): Promise<void> {
  const stop = host.listen((event) => {
    if (event.kind !== 'ui' || event.request.kind !== 'alert') return;
    const { id } = event.request;
    queueMicrotask(() => host.answer(id, 'ok'));
  });
  const sheet = host.sheets()[0] ?? '';
  for (const [text, name] of STEPS[fill]) {
    say(text);
    const result = await host.call(name, [], {
      window: 'start',
      selection: { sheet, range: 'A1' },
    });
    if (result.kind === 'failure') throw new Error(result.message);
  }
  stop();
  await host.settled();
  await host.save();
}

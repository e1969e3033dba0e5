import { describe, expect, test } from 'vitest';
import { openMemoryBook } from '../openMemoryBook.ts';

const book = openMemoryBook();

const BOND = { figure: 'bondTemperature', of: '' } as const;

/** The row of a setting on the sheet Shop. */
function rowOf(label: string): number {
  return book.host.values('Shop', 'A1:A60').findIndex(([text]) => text === label) + 1;
}

function setting(label: string): number {
  return Number(book.host.values('Shop', `B${rowOf(label)}`)[0]?.[0]);
}

async function bondProposal() {
  const answer = await book.ask('readTrials', {});
  if (answer.kind !== 'ok') throw new Error(JSON.stringify(answer));
  const found = answer.proposals.find(({ figure }) => figure === BOND.figure);
  if (found === undefined) throw new Error('no bond temperature');
  return found;
}

/** Latest next pour of the second layer of an order [s]. */
async function latestNextPour(order: string): Promise<number> {
  const answer = await book.ask('planSelectedOrder', { order });
  if (answer.kind !== 'ok' || answer.plan.kind !== 'plan') throw new Error(JSON.stringify(answer));
  const window = answer.plan.layers[1]?.window;
  if (window?.kind !== 'between') throw new Error(JSON.stringify(window));
  return window.latest;
}

async function causesOf(row: string): Promise<readonly string[]> {
  const answer = await book.ask('causesFor', { row });
  if (answer.kind !== 'ok') throw new Error(JSON.stringify(answer));
  return answer.shown?.causes.map(({ because }) => because) ?? [];
}

describe('the bond temperature from the log', () => {
  test('in use it moves the latest next pour and the diagnosis; taken back, both are as before', async () => {
    const before = { bond: setting('Bond temperature'), causes: await causesOf('54') };
    // 116 °C as the shop begins
    expect(before.bond).toBeNear(240.8, { absolute: 1e-9 });
    expect(before.causes.join()).not.toContain('threshold');

    const { result } = await bondProposal();
    if (result.kind !== 'fitted') throw new Error(result.kind);
    expect(await book.ask('adoptFigure', { ...BOND, who: 'AK' })).toMatchObject({ changed: 'now' });
    await book.host.settled();
    // the cell holds °F, the fit °C
    expect(setting('Bond temperature')).toBeNear(result.figure.value * 1.8 + 32, { absolute: 0.1 });
    expect((await causesOf('54')).join()).toMatch(
      /the (line|back) reached the (belly|line) at 1\d\d °F surface, only \d+ °F above the threshold/,
    );
    const { back, isInUse } = await bondProposal();
    expect(isInUse).toBe(true);

    // A mold top of 30 °C below boiling, so that layers have a last moment at all.
    book.host.type('Shop', `B${rowOf('Mold top above boiling')}`, '-54');
    await book.host.settled();
    const latest = await latestNextPour('1007');
    if (back?.kind !== 'ready') throw new Error('nothing to take back');
    expect(await book.ask('revertFigure', { ...BOND, entry: back.entry })).toMatchObject({
      changed: 'now',
    });
    await book.host.settled();
    expect(setting('Bond temperature')).toBeNear(before.bond, { absolute: 1e-9 });
    // 4 K cooler to bond: from some 68 s to some 92 s
    expect((await latestNextPour('1007')) - latest).toBeNear(24, { absolute: 4 });
    book.host.type('Shop', `B${rowOf('Mold top above boiling')}`, '5.4');
    await book.host.settled();
    expect(await causesOf('54')).toEqual(before.causes);
  });
});

import { describe, expect, test } from 'vitest';
import type { Proposal } from '../../shared/trials/proposal.ts';
import {
  fittedText,
  heatLossText,
  presentText,
  proposalTitle,
  proposalValue,
  trialEvidenceText,
  verdictTexts,
} from '../../shared/trials/proposalTitle.ts';

const REMARK = {
  kind: 'readings scatter more than the probe',
  residualDeviation: 5,
  readingError: 2,
} as const;

const CONTACT: Proposal = {
  figure: 'contact',
  of: 'Griddle A',
  present: { value: 96, from: 'own' },
  result: {
    kind: 'fitted',
    figure: { value: 84.7, standardError: 2.75 },
    count: 5,
    heatLoss: { value: 0.94, standardError: 0.144 },
    remarks: [{ kind: 'contact and loss told apart', correlation: 0.8 }],
  },
  isInUse: false,
  trials: [{ trial: 'T-1', date: '2026-10-30' }, { trial: 'T-3' }],
  pictures: [],
};

function bench(
  figure: Proposal['figure'],
  value: number,
  standardError: number,
  count = 2,
): Proposal {
  const measured = {
    kind: 'fitted',
    figure: { value, standardError },
    count,
    remarks: [],
  } as const;
  return {
    ...CONTACT,
    figure,
    of: figure === 'microwaveEfficiency' ? '' : 'Soft',
    present: { value, from: 'default' },
    result: measured,
    trials: [{ trial: 'B-1' }],
  };
}

/** Everything that a card says of a proposal. */
function said(proposal: Proposal, system: 'US' | 'metric' = 'US') {
  return [
    proposalTitle(proposal),
    presentText(proposal, system),
    fittedText(proposal, system),
    heatLossText(proposal, system),
    ...verdictTexts(proposal, system),
    trialEvidenceText(proposal),
  ];
}

describe('what a card says', () => {
  test('of a contact', () => {
    expect(said(CONTACT)).toEqual([
      'Contact: Griddle A',
      '96 W/m²·K',
      '85 W/m²·K ± 2.8 W/m²·K',
      '94 % of the usual ± 14 %',
      'the readings tell contact and heat loss apart',
      'T-1 (2026-10-30) and T-3: 5 readings',
    ]);
  });

  test('of a contact whose loss is assumed', () => {
    const { heatLoss: _, ...rest } = CONTACT.result as Extract<
      Proposal['result'],
      { kind: 'fitted' }
    >; // fitted above
    const result = { ...rest, assumedLoss: 1 };
    expect(heatLossText({ ...CONTACT, result }, 'US')).toBe('100 % of the usual, assumed');
  });

  test('of readings that scatter: which row lies farthest off', () => {
    const reading = { trial: 'T-1', seconds: 300, top: 50 };
    const readings = [
      { ...reading, row: 2, off: 3 },
      { ...reading, row: 3, off: -9 },
    ];
    const picture = { kind: 'heat-trial', title: '', system: 'US', curve: [], readings } as const;
    const result = { ...CONTACT.result, remarks: [REMARK] } as Proposal['result']; // fitted above
    const words = (system: 'US' | 'metric') =>
      verdictTexts({ ...CONTACT, result, pictures: [picture] }, system);
    expect(words('US')).toEqual([
      'readings scatter by 9.0 °F: more than a probe does, so check times, setting and block',
      'row 3 of Heat trials lies 16 °F below the curve',
    ]);
    expect(words('metric')[1]).toBe('row 3 of Heat trials lies 9 °C below the curve');
  });

  test('of a set temperature, in both systems', () => {
    expect(said(bench('setTemperature', 94.5, 0.61, 3))).toEqual([
      'Set temperature: Soft',
      '202 °F, the usual figure',
      '202 °F ± 1.1 °F',
      undefined,
      'good',
      'B-1: 3 pucks',
    ]);
    expect(said(bench('setTemperature', 94.5, 2.6, 1), 'metric')).toEqual([
      'Set temperature: Soft',
      '95 °C, the usual figure',
      '95 °C ± 2.6 °C',
      undefined,
      'one puck: pour two more to see how they scatter',
      'B-1: 1 puck',
    ]);
  });

  test('of a microwave and of drops', () => {
    expect(said(bench('microwaveEfficiency', 0.41, 0.0186))).toEqual([
      'Microwave efficiency',
      '41 %, the usual figure',
      '41 % ± 1.9 %',
      undefined,
      'good: known to ±5 %',
      'B-1: 2 heatings',
    ]);
    expect(said(bench('dropVolume', 3.82e-8, 4e-9, 1))).toEqual([
      'Drop: Soft',
      '38.2 µL, the usual figure',
      '38.2 µL ± 4.0 µL',
      undefined,
      'known to ±10 % only: count more drops',
      'B-1: 1 count',
    ]);
  });

  test.each([
    {
      result: { kind: 'no trials' } as const,
      words: 'the trials that it came from are not in the book any more',
    },
    {
      result: { kind: 'no fit', because: 'fewer than two readings' } as const,
      words: 'give at least two readings',
    },
    {
      result: { kind: 'beyond', text: 'drop volume must be at most 200 µL, got 500 µL' } as const,
      words: 'this cannot be: drop volume must be at most 200 µL, got 500 µL',
    },
  ])('of trials that give no figure: $words', ({ result, words }) => {
    const proposal = { ...CONTACT, result };
    expect(verdictTexts(proposal, 'US')).toEqual([words]);
    expect([fittedText(proposal, 'US'), heatLossText(proposal, 'US')]).toEqual([
      undefined,
      undefined,
    ]);
    expect(trialEvidenceText(proposal)).toBe('T-1 (2026-10-30) and T-3');
  });

  test('a small contact keeps a digit', () => {
    expect(proposalValue(CONTACT, 8.26, 'US')).toBe('8.3 W/m²·K');
  });
});

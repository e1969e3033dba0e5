import type { ContactFit } from '../../heat/fit/contactFit.ts';
import { fitContact } from '../../heat/fit/fitContact.ts';
import { contactRemarkText, noContactText } from '../../trials/contact/contactRemarkText.ts';
import type { UnitSystem } from '../../units/measures.ts';
import { defineSpill } from '../defineSpill.ts';
import { BLOCK_ONLY, FINISH, heatingMoldOf, ROOM, SETTING } from '../heatingMoldOf.ts';
import { FIGURE_COLUMNS } from './figureColumns.ts';
import { heatTrials } from './heatTrials.ts';

const LOSS = 'heat loss (1 is usual)';
const CONTACT = 'contact conductance (W/m²·K)';

export const POUR_HEAT_FIT = defineSpill({
  name: 'POUR_HEAT_FIT',
  family: 'trials',
  about:
    'Contact of a plate with its molds, and how much heat they lose, from mold tops read while heating.',
  params: {
    minutes: {
      kind: 'list',
      item: 'minutes',
      measure: 'minutes',
      about:
        'Since the mold was put on the hot plate; what is read at 0 is where it starts, else the room is.',
      bounds: { atLeast: 0, atMost: 14_400 },
      most: 200,
    },
    moldTops: {
      kind: 'list',
      item: 'mold top',
      measure: 'temperature',
      about: 'Mold top read then.',
      bounds: { atLeast: -20, atMost: 300 },
      matches: { list: 'minutes' },
    },
    settings: {
      kind: 'list',
      field: 'plate settings',
      item: 'plate setting',
      measure: 'temperature',
      about: 'Plate setting at each reading, or one for all.',
      bounds: SETTING.bounds,
      matches: { list: 'minutes' },
      oneForAll: true,
    },
    ...BLOCK_ONLY,
    room: ROOM,
    finish: FINISH,
    trialNumbers: {
      kind: 'list',
      item: 'trial number',
      about: 'Which heating each reading is of; blank where all are of one.',
      bounds: { atLeast: 0, atMost: 1e6 },
      matches: { list: 'minutes' },
      optional: true,
    },
  },
  returns: FIGURE_COLUMNS,
  examples: [
    {
      args: [[16.05681, 16.05681], [100, 100], 132, 152.4, 101.6, 25.4, 22, 'bare', '', 'metric'],
      result: [
        [
          CONTACT,
          100,
          6.33,
          '2 readings cannot tell contact from heat loss, which is taken as usual: add one after 50 min',
        ],
        [LOSS, 1, 0.2, 'assumed'],
      ],
      within: 0.002,
      source:
        'SCIPYHEATUP: 963.409 s to 100 °C with a contact of 100, read twice; the error is this model’s own',
    },
  ],
  notes:
    'Least squares of the readings on the curve of POUR_HEAT_CURVE; a reading counts as good to 2 °C. The heat loss is a share, over the published loss of such faces; where the readings cannot tell it stays 1 and its doubt is in the contact’s error. All heatings with one plate and blocks of one size; the plate is hot from the start and holds its setting.',
  compute: ({ room, blockLength, blockWidth, blockHeight, finish, ...readings }, system) => {
    const mold = heatingMoldOf({ blockLength, blockWidth, blockHeight, finish });
    return fitRows(fitContact(heatTrials(readings, mold, room)), system);
  },
});

function fitRows(fit: ContactFit, system: UnitSystem) {
  if (fit.kind === 'no fit') return [[CONTACT, 'no fit', '', noContactText(fit.because)]];
  const { contact, lossShare } = fit;
  const words = fit.remarks.map((remark) => contactRemarkText(remark, system));
  const from = lossShare.from === 'readings' ? 'from the readings' : 'assumed';
  return [
    [CONTACT, contact.value, contact.standardError, words.join('; ')],
    [LOSS, lossShare.value, lossShare.standardError, from],
  ];
}

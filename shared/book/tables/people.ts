import type { Table } from '../column.ts';

/** Which days a line of *People* is for. */
export const WORK_DAYS = [
  'weekdays',
  'every day',
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;

const YES_NO = ['yes', 'no'] as const;

export const PEOPLE = {
  sheet: 'People',
  about: 'hours of one person on some days; several lines of a name add up',
  columns: {
    person: {
      kind: 'text',
      heading: 'Person',
      width: 100,
      required: true,
      about: 'Name or initials. A person with other hours on other days has a line for each.',
    },
    days: {
      kind: 'choice',
      heading: 'Days',
      width: 95,
      choices: WORK_DAYS,
      about: 'Days of this line; blank means weekdays.',
    },
    from: {
      kind: 'clock',
      heading: 'From',
      width: 75,
      required: true,
      about: 'Start of work, such as 8:00 or 8 am.',
    },
    to: {
      kind: 'clock',
      heading: 'To',
      width: 75,
      required: true,
      about: 'End of work. Hot work is planned to be off the plate by then.',
    },
    breakFrom: {
      kind: 'clock',
      heading: 'Break from',
      width: 85,
      about: 'Start of the break; leave both blank for none.',
    },
    breakTo: {
      kind: 'clock',
      heading: 'Break to',
      width: 75,
      about: 'End of the break.',
    },
    colors: {
      kind: 'choice',
      heading: 'Colors',
      width: 65,
      choices: YES_NO,
      about: 'Weighs and colors; blank means yes.',
    },
    cooks: {
      kind: 'choice',
      heading: 'Cooks',
      width: 65,
      choices: YES_NO,
      about: 'Stands by the microwave; blank means yes.',
    },
    pours: {
      kind: 'choice',
      heading: 'Pours',
      width: 65,
      choices: YES_NO,
      about: 'Pours and tops off; blank means yes.',
    },
    finishes: {
      kind: 'choice',
      heading: 'Finishes',
      width: 70,
      choices: YES_NO,
      about:
        'Demolds, inspects and packs; blank means yes. Laying out and cleaning is for everybody.',
    },
    notes: { kind: 'text', heading: 'Notes', width: 200, about: 'Anything to remember.' },
  },
} as const satisfies Table;

import type { ContactFit, ContactRemark } from '../../heat/fit/contactFit.ts';
import { formatFixed } from '../../units/formatPlain.ts';
import { MEASURES, type UnitSystem } from '../../units/measures.ts';
import { fromEngine } from '../../units/toEngine.ts';
import { UNITS } from '../../units/units.ts';
import { countText, durationText } from '../../words/quantityText.ts';

type NoFit = Extract<ContactFit, { readonly kind: 'no fit' }>['because'];

/** A remark of a contact fit as one sentence without a full stop. */
export function contactRemarkText(remark: ContactRemark, system: UnitSystem): string {
  switch (remark.kind) {
    case 'contact and loss told apart':
      return 'the readings tell contact and heat loss apart';
    case 'contact not told from loss':
      return `${countText(remark.readings, 'reading')} cannot tell contact from heat loss, which is taken as usual: add one after ${durationText(remark.add.seconds)}`;
    case 'readings scatter more than the probe':
      return `readings scatter by ${differenceWords(remark.residualDeviation, system)}: more than a probe does, so check times, setting and block`;
    case 'contact poorly known':
      return `contact known to ±${formatFixed(remark.relativeError * 100, 0)} % only: read more often while the mold climbs`;
  }
}

/** Why heat trials give no contact. */
export function noContactText(because: NoFit): string {
  switch (because) {
    case 'fewer than two readings':
      return 'give at least two readings';
    case 'tops hotter than any contact gives':
      return 'the mold is hotter than any contact makes it: check setting, block and minutes';
    case 'tops colder than any contact gives':
      return 'the mold is colder than any contact leaves it: check setting, block and minutes, and that no infrared thermometer looked at bare metal';
    case 'readings do not tell the contact':
      return 'these readings do not tell the contact: read while the mold climbs';
  }
}

function differenceWords(kelvin: number, system: UnitSystem): string {
  const unit = MEASURES.temperatureDifference[system];
  return `${formatFixed(fromEngine(kelvin, unit), 1)} ${UNITS[unit].label}`;
}

import { shareText, temperatureText } from '../../words/quantityText.ts';
import { temperatureDifferenceText } from '../../words/temperatureDifferenceText.ts';
import type { CauseRule } from './causeRule.ts';
import type { LayerFigures, RunFigures } from './runFigures.ts';

/** What reading a stirred cup leaves open [K]. */
const CUP_READING = 2;
/** Span of the doubt about how cool, or how hot, is too much [K]. */
const CUP_SPAN = 5;
/** A cup this much hotter than planned is thinner than the pourer is used to [K]. Common practice, no source. */
const MUCH_HOTTER = 8;

/** Causes that the cups show: their temperatures at the pour, their heat behind them, what is in them. */
export const CUP_CAUSES: readonly CauseRule[] = [
  {
    cause: 'cup too cool when it was poured',
    makes: { shortFill: 1, trappedAir: 0.9, coldCrack: 0.7, unevenLine: 0.6, peeledLayer: 0.4 },
    source: 'CASTINGATLAS',
    speaks: ({ layers, lowestPour, system }) => {
      const coolest = byPour(layers)[0];
      if (coolest === undefined || coolest.pour >= lowestPour - CUP_READING) return undefined;
      const { name, pour, planned } = coolest;
      return {
        excess: (lowestPour - pour) / CUP_SPAN,
        because: `the ${name} was poured at ${temperatureText(pour, system)}, ${temperatureDifferenceText(lowestPour - pour, system)} below the lowest pour temperature`,
        cure: `bring the cup back to ${temperatureText(planned, system)} once it falls below ${temperatureText(lowestPour, system, 'up')}; fill fewer cavities between heatings`,
      };
    },
  },
  {
    cause: 'cup above the hard stop',
    makes: { scorch: 1, trappedAir: 0.6, flash: 0.6, dimple: 0.4 },
    source: 'PVCAGEING',
    speaks: ({ layers, hardStop, system }) => {
      const [hottest] = byPour(layers).reverse();
      if (hottest === undefined || hottest.pour <= hardStop) return undefined;
      return {
        excess: 1 + (hottest.pour - hardStop) / CUP_SPAN,
        because: `the ${hottest.name} was poured at ${temperatureText(hottest.pour, system)}, above the ${temperatureText(hardStop, system, 'down')} that no cup may pass`,
        cure: 'throw that cup away; heat in short bursts, stir and read after each, and keep the fan on',
      };
    },
  },
  {
    cause: 'cup much hotter than planned',
    makes: { flash: 1, dimple: 0.8, scorch: 0.5, bleed: 0.4 },
    source: 'TRADE',
    speaks: ({ layers, system }) => {
      const hottest = [...pouredOf(layers)].sort(
        (one, other) => other.pour - other.planned - (one.pour - one.planned),
      )[0];
      if (hottest === undefined || hottest.pour <= hottest.planned + MUCH_HOTTER) return undefined;
      const { name, pour, planned } = hottest;
      return {
        excess: (pour - planned - MUCH_HOTTER + CUP_READING) / CUP_SPAN,
        because: `the ${name} was poured at ${temperatureText(pour, system)}, ${temperatureDifferenceText(pour - planned, system)} hotter than planned: it runs thinner and shrinks more`,
        cure: `let the cup come down to ${temperatureText(planned, system)}, stirring, before you pour`,
      };
    },
  },
  {
    cause: 'cup too long at heat',
    makes: { scorch: 0.9 },
    source: 'PVCAGEING',
    speaks: ({ heatShare }) => {
      if (heatShare === undefined || heatShare <= 1) return undefined;
      return {
        excess: heatShare,
        because: `a cup of this run uses ${shareText(heatShare)} of its heat budget, leftovers’ earlier heat included`,
        cure: 'cook smaller cups fresh for the later rounds, and use no old leftovers for light colors',
      };
    },
  },
  {
    cause: 'more colorant than its material bears',
    makes: { bleed: 1, trappedAir: 0.2 },
    source: 'COLORMIGRATION',
    speaks: ({ overLimit }) => {
      const [first] = overLimit;
      if (first === undefined) return undefined;
      return { excess: 1.5, ...split(first) };
    },
  },
];

type Poured = LayerFigures & { readonly pour: number };

function pouredOf(layers: RunFigures['layers']): readonly Poured[] {
  return layers.flatMap((layer) =>
    layer.pour === undefined ? [] : [{ ...layer, pour: layer.pour }],
  );
}

/** Coolest first. */
function byPour(layers: RunFigures['layers']): Poured[] {
  return [...pouredOf(layers)].sort((one, other) => one.pour - other.pour);
}

/** The plan's own sentence: what is too much, a colon, what to do. */
function split(sentence: string): { readonly because: string; readonly cure: string } {
  const at = sentence.indexOf(': ');
  return { because: sentence.slice(0, at), cure: sentence.slice(at + 2).replace(/\.$/, '') };
}

import { POUR_BATCH } from './batch/POUR_BATCH.ts';
import { POUR_CUPS } from './batch/POUR_CUPS.ts';
import { POUR_CUT } from './batch/POUR_CUT.ts';
import { POUR_DENSITY } from './batch/POUR_DENSITY.ts';
import { POUR_DOSE } from './batch/POUR_DOSE.ts';
import { POUR_FLOATS } from './batch/POUR_FLOATS.ts';
import { POUR_LOADING } from './batch/POUR_LOADING.ts';
import { POUR_PIECES } from './batch/POUR_PIECES.ts';
import { POUR_SHARE } from './batch/POUR_SHARE.ts';
import { POUR_LOTS } from './book/POUR_LOTS.ts';
import { POUR_MONEY } from './book/POUR_MONEY.ts';
import { POUR_ORDERS } from './book/POUR_ORDERS.ts';
import { POUR_SHORT } from './book/POUR_SHORT.ts';
import { POUR_STOCK } from './book/POUR_STOCK.ts';
import { POUR_FIT } from './day/POUR_FIT.ts';
import { POUR_ROUNDS } from './day/POUR_ROUNDS.ts';
import { POUR_RUN_TIME } from './day/POUR_RUN_TIME.ts';
import { POUR_BOIL } from './heat/POUR_BOIL.ts';
import { POUR_CONTACT } from './heat/POUR_CONTACT.ts';
import { POUR_COOK } from './heat/POUR_COOK.ts';
import { POUR_COOL } from './heat/POUR_COOL.ts';
import { POUR_CUP_TIME } from './heat/POUR_CUP_TIME.ts';
import { POUR_HEAT_CURVE } from './heat/POUR_HEAT_CURVE.ts';
import { POUR_HEAT_USED } from './heat/POUR_HEAT_USED.ts';
import { POUR_LAYER_CURVE } from './heat/POUR_LAYER_CURVE.ts';
import { POUR_NEXT_BY } from './heat/POUR_NEXT_BY.ts';
import { POUR_OPEN_TIME } from './heat/POUR_OPEN_TIME.ts';
import { POUR_PLATEAU } from './heat/POUR_PLATEAU.ts';
import { POUR_PREHEAT } from './heat/POUR_PREHEAT.ts';
import { POUR_SETTING } from './heat/POUR_SETTING.ts';
import { POUR_WINDOW } from './heat/POUR_WINDOW.ts';
import { POUR_BREAKS } from './money/POUR_BREAKS.ts';
import { POUR_COST } from './money/POUR_COST.ts';
import { POUR_EXCISE } from './money/POUR_EXCISE.ts';
import { POUR_MARGIN } from './money/POUR_MARGIN.ts';
import { POUR_PRICE } from './money/POUR_PRICE.ts';
import { POUR_BOND_FIT } from './quality/POUR_BOND_FIT.ts';
import { POUR_CAUSE } from './quality/POUR_CAUSE.ts';
import { POUR_CHART } from './quality/POUR_CHART.ts';
import { POUR_YIELD } from './quality/POUR_YIELD.ts';
import { POUR_YIELD_TABLE } from './quality/POUR_YIELD_TABLE.ts';
import type { SheetFunction } from './sheetFunctionTypes.ts';
import { POUR_DROP_FIT } from './trials/POUR_DROP_FIT.ts';
import { POUR_HEAT_FIT } from './trials/POUR_HEAT_FIT.ts';
import { POUR_OVEN_FIT } from './trials/POUR_OVEN_FIT.ts';
import { POUR_SET_FIT } from './trials/POUR_SET_FIT.ts';

/** Every sheet function, by family. Stubs, manual, checks and the workbench read this list. */
export const ALL_FUNCTIONS: readonly SheetFunction[] = [
  POUR_BATCH,
  POUR_CUPS,
  POUR_CUT,
  POUR_DENSITY,
  POUR_DOSE,
  POUR_FLOATS,
  POUR_LOADING,
  POUR_PIECES,
  POUR_SHARE,
  POUR_BOIL,
  POUR_CONTACT,
  POUR_COOK,
  POUR_COOL,
  POUR_CUP_TIME,
  POUR_HEAT_USED,
  POUR_NEXT_BY,
  POUR_OPEN_TIME,
  POUR_PLATEAU,
  POUR_PREHEAT,
  POUR_SETTING,
  POUR_WINDOW,
  POUR_HEAT_CURVE,
  POUR_LAYER_CURVE,
  POUR_HEAT_FIT,
  POUR_SET_FIT,
  POUR_OVEN_FIT,
  POUR_DROP_FIT,
  POUR_YIELD,
  POUR_YIELD_TABLE,
  POUR_CHART,
  POUR_BOND_FIT,
  POUR_CAUSE,
  POUR_ROUNDS,
  POUR_RUN_TIME,
  POUR_FIT,
  POUR_COST,
  POUR_PRICE,
  POUR_MARGIN,
  POUR_BREAKS,
  POUR_EXCISE,
  POUR_ORDERS,
  POUR_MONEY,
  POUR_STOCK,
  POUR_SHORT,
  POUR_LOTS,
];

import type { Bounds } from '../../errors/requireNumber.ts';
import type { MeasureName } from '../../units/measures.ts';

interface SettingBase {
  /** The words in the *Setting* column; also the field name in messages. */
  readonly label: string;
  readonly about: string;
}

interface NumberSetting extends SettingBase {
  readonly kind: 'number';
  readonly measure?: MeasureName;
  /** In engine units. */
  readonly bounds: Bounds;
  readonly value: number;
  readonly places: number;
}

interface ChoiceSetting extends SettingBase {
  readonly kind: 'choice';
  readonly choices: readonly string[];
  readonly value: string;
}

/** An amount of the workbook's currency, or a price for something. */
export interface MoneySetting extends SettingBase {
  readonly kind: 'money';
  /** What one price is for; the row's unit then reads `USD per hour`. */
  readonly per?: string;
  readonly bounds: Bounds;
  readonly value: number;
  readonly places: number;
}

interface TextSetting extends SettingBase {
  readonly kind: 'text';
  readonly value: string;
  /** Text that must read as something; any text where it is left out. */
  readonly form?: 'quantities';
}

/** A figure that the sheet works out from other rows; for the eye, never read back. */
export interface ShopFigure extends SettingBase {
  readonly kind: 'computed';
  readonly measure: MeasureName;
  readonly places: number;
  /** The setting whose row comes just before */
  readonly after: string;
}

export type Setting = NumberSetting | MoneySetting | ChoiceSetting | TextSetting;

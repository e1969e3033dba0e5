import { type ILocales, LocaleType, mergeLocales } from '@univerjs/core';
import design from '@univerjs/design/locale/en-US';
import docsUi from '@univerjs/docs-ui/locale/en-US';
import sheets from '@univerjs/sheets/locale/en-US';
import sheetsDataValidation from '@univerjs/sheets-data-validation/locale/en-US';
import sheetsDataValidationUi from '@univerjs/sheets-data-validation-ui/locale/en-US';
import sheetsFormula from '@univerjs/sheets-formula/locale/en-US';
import sheetsFormulaUi from '@univerjs/sheets-formula-ui/locale/en-US';
import sheetsNumfmtUi from '@univerjs/sheets-numfmt-ui/locale/en-US';
import sheetsUi from '@univerjs/sheets-ui/locale/en-US';
import ui from '@univerjs/ui/locale/en-US';

/** The grid's own texts. */
export function locales(): ILocales {
  return {
    [LocaleType.EN_US]: mergeLocales(
      design,
      ui,
      docsUi,
      sheets,
      sheetsUi,
      sheetsFormula,
      sheetsFormulaUi,
      sheetsNumfmtUi,
      sheetsDataValidation,
      sheetsDataValidationUi,
    ),
  };
}

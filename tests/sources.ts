/** Every outside source that a check names: author, title, edition, year. `seen` says how the printed number reached us. */
export const SOURCES = {
  HB44: 'NIST Handbook 44, Appendix C, General Tables of Units of Measurement',
  SP811: 'NIST Special Publication 811, Guide for the Use of the SI, Appendix B.8, 2008',
  UCUM: 'UCUM, Unified Code for Units of Measure, through the npm package @lhncbc/ucum-lhc 7.1.10',
} as const satisfies Readonly<Record<string, string>>;

export type SourceKey = keyof typeof SOURCES;

/** Every outside source that a check names: author, title, edition, year. `seen` says how the printed number reached us. */
export const SOURCES = {
  HB44: 'NIST Handbook 44, Appendix C, General Tables of Units of Measurement',
  SP811: 'NIST Special Publication 811, Guide for the Use of the SI, Appendix B.8, 2008',
  UCUM: 'UCUM, Unified Code for Units of Measure, through the npm package @lhncbc/ucum-lhc 7.1.10',
  USSA76: 'NOAA, NASA, USAF, U.S. Standard Atmosphere, 1976',
  ISO2533: 'ISO 2533, Standard Atmosphere, 1975; from memory',
  ATMOSPHERETABLE: 'open engineering table of the U.S. Standard Atmosphere 1976',
  ASHRAE: 'ASHRAE Handbook, Fundamentals, chapter 1, Table 1, a reproduction; loosely rounded',
  IAPWS97: 'IAPWS R7-97(2012), Industrial Formulation 1997, region 4, Tables 34 to 36',
  CENGELBOLES: 'Çengel, Boles, Thermodynamics, Table A-5; from memory',
  STEAMTABLE: 'saturation table of an open university course, after NIST data',
  FSIS: 'USDA FSIS, High Altitude Cooking and Food Safety, a third-party copy of its table',
  NOAABOIL: 'NOAA/NASA table of boiling point against elevation',
  INCROPERA:
    'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer, 6th ed., 2007',
  CENGEL: 'Çengel, Ghajar, Heat and Mass Transfer, 4th ed., 2011',
  LIENHARD: 'Lienhard, Lienhard, A Heat Transfer Textbook, open edition',
  HOLMAN: 'Holman, Heat Transfer, 10th ed., 2010',
  GEANKOPLIS: 'Geankoplis, Transport Processes and Unit Operations, 3rd ed., 1993',
  CARSLAW: 'Carslaw, Jaeger, Conduction of Heat in Solids, 2nd ed., 1959; from memory',
  OPENSTAXPHYSICS: 'OpenStax, College Physics, chapter 14',
  OPENSTAXCALCULUS: 'OpenStax, Calculus, Newton’s law of cooling example; from memory',
  IEC60705:
    'IEC 60705, water-load test of microwave output, in the form of an appliance service manual',
  GIANCOLI: 'Giancoli, Physics, microwave problem; inputs seen, answers from memory',
  PVCAGEING:
    'J. Therm. Anal. Calorim., isothermal degradation of plasticized PVC 160 to 220 °C, c. 2011, abstract',
  HEATSTUDY:
    'numeric study made for this project outside of it: Python and scipy, implicit 1-D slab, 2-D groove, lumped block with a varying loss',
  TRADE: 'common practice, no source',
} as const satisfies Readonly<Record<string, string>>;

export type SourceKey = keyof typeof SOURCES;

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
    'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer, 6th ed., 2007; public copies, re-typed',
  CENGEL: 'Çengel, Ghajar, Heat and Mass Transfer, 4th ed., 2011; public copies, re-typed',
  LIENHARD: 'Lienhard, Lienhard, A Heat Transfer Textbook, open edition',
  HOLMAN: 'Holman, Heat Transfer, 10th ed., 2010; a public copy, re-typed',
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
  MILLERFREUND:
    'Johnson, Miller and Freund’s Probability and Statistics for Engineers, ch. 4; public copy, re-typed',
  STAT414: 'Penn State STAT 414, lesson 11.6, Example 11-2',
  NEWCOMBE1998: 'Newcombe, Statistics in Medicine 17 (1998) 857-872, Table I; from memory',
  WILSONPACKAGE: 'npm wilson-score-interval 2.1.0, README',
  GELMAN: 'Gelman et al., Bayesian Data Analysis, 3rd ed., 2013; from memory',
  'JOHNSON-KOTZ':
    'Johnson, Kemp, Kotz, Univariate Discrete Distributions, 3rd ed., 2005; from memory',
  JSTAT: 'npm jstat 1.9.6',
  GEISSLER1889:
    'Geissler, boys in sibships of twelve, Saxony 1876-1885; Lindsey, Altham, Applied Statistics 47 (1998) 149-157',
  BETABINOMIALDOC:
    'documentation of a general-purpose statistics library, beta-binomial example on the Saxony sibships; fitted counts from memory',
  LINDSEYALTHAM1998: 'Lindsey, Altham, Applied Statistics 47 (1998) 149-157; from memory',
  SKELLAM1948: 'Skellam, J. Royal Statistical Society B 10 (1948) 257-261; from memory',
  CASELLA1985:
    'Casella, An Introduction to Empirical Bayes Data Analysis, The American Statistician 39 (1985) 83-87; from memory',
  ABRAMOWITZSTEGUN: 'Abramowitz, Stegun, Handbook of Mathematical Functions, 1964; from memory',
  CRC: 'CRC Standard Mathematical Tables, mensuration; from memory',
  KELL1975: 'Kell, J. Chem. Eng. Data 20 (1975) 97-105; coefficients read in public code',
  CIPMWATER:
    'Tanaka et al., Metrologia 38 (2001) 301-309, density of water 0 to 40 °C, equation of page 305; coefficients read in public code',
  JONESHARRIS:
    'Jones, Harris, ITS-90 Density of Water Formulation, J. Res. NIST 97 (1992) 335-340; coefficients read on a public page',
  COMPOUNDER: 'thermoplastic compounder’s design note, weight-fraction / specific-volume method',
  ADDITIVE: 'additive volumes, recomputed by hand',
  SP430: 'NIST Special Publication 430, household weights and measures, 2004',
  CFR101: '21 CFR 101.9(b)(5)(viii), nutrition-label measures',
  GNUUNITS: 'GNU units, drop = 1/20 mL',
  NISTHANDBOOK: 'NIST/SEMATECH, e-Handbook of Statistical Methods',
  TRADE: 'common practice, no source',
  HOSEASHAMPINE:
    'Hosea, Shampine, Analysis and implementation of TR-BDF2, Applied Numerical Mathematics 20, 1996; from memory',
  CHANDRUPATLA:
    'Chandrupatla, A new hybrid quadratic/bisection algorithm, Advances in Engineering Software 28(3), 1997',
  CHURCHILLCHU:
    'Churchill, Chu, Int. J. Heat Mass Transfer 18 (1975) 1323-1329; as printed in INCROPERA and CENGEL',
  MCADAMS:
    'McAdams, Heat Transmission, 3rd ed., 1954; through an example of a general heat-transfer library',
  DORMANDPRINCE: 'Dormand, Prince, J. Comput. Appl. Math. 6 (1980) 19-26; from memory',
  SCIPYHEATUP:
    'scipy 1.17.1 solve_ivp (rtol 1e-10) on the same balances and correlations, written apart from the engine',
  NISTSTRD: 'NIST Statistical Reference Datasets, nonlinear regression, certified values',
  BATESWATTS:
    'Bates, Watts, Nonlinear Regression Analysis and Its Applications, 1988; data set BOD of R 4.2.2',
  MARQUARDT: 'Marquardt, J. SIAM 11 (1963) 431-441; from memory',
  MLLM: 'npm ml-levenberg-marquardt 5.1.0',
  SLOANREZTSOV:
    'Sloan, Reztsov, Component-by-component construction of good lattice rules, Mathematics of Computation 71 (2002) 263-273; from memory',
  CRANLEYPATTERSON:
    'Cranley, Patterson, Randomization of number theoretic methods for multiple integration, SIAM J. Numer. Anal. 13 (1976) 904-914; from memory',
  MURMUR: 'Appleby, MurmurHash3, 2011, public domain; from memory',
  GOLDENPOINTS:
    'The unreasonable effectiveness of quasirandom sequences, 2018; rule read in copies of the page',
  HYNDMANFAN:
    'Hyndman, Fan, Sample Quantiles in Statistical Packages, The American Statistician 50 (1996) 361-365; from memory',
  SPEARMAN:
    'Spearman, The Proof and Measurement of Association between Two Things, Am. J. Psychology 15 (1904) 72-101; from memory',
  SPEARMANEXAMPLE: 'open encyclopedia, rank correlation of ten pairs, -29/165; from memory',
  JOHNSONKOTZ95:
    'Johnson, Kotz, Balakrishnan, Continuous Univariate Distributions, vol. 2, 2nd ed., 1995; from memory',
  ABRAMOWITZ:
    'Abramowitz, Stegun, Handbook of Mathematical Functions, 1964, table 25.4; from memory',
  ISO4217: 'ISO 4217, codes and minor digits of currencies, through Node’s Intl; tests compare',
  CLDR: 'Unicode CLDR, how currencies are written, through Node’s Intl; tests compare',
  'MARGIN-MARKUP':
    'general business mathematics: m = u / (1 + u), u = m / (1 - m); its everyday cases',
  IRC4161:
    '26 USC 4161(a)(1)(A), (a)(4): 10 % of the maker’s price of sport fishing equipment; statute copies, checked 2026-06-20; 26 CFR 48.4161(a)-1, checked 2024-11-25',
  IRC4216:
    '26 USC 4216(a): packing counts into the price, the tax itself and transport do not; statute text, headings of 26 CFR 48.4216(a)-1, -2',
  'REVRUL65-41': 'Rev. Rul. 65-41: the price charged is presumed to hold the tax',
  RFC4180: 'RFC 4180, Common Format and MIME Type for CSV Files, 2005, section 2',
  FORM720:
    'Form 720 and its instructions, 2017, Part II, IRS No. 41: the tax of each sale in the quarter is added up; due days from memory',
  'EXCISE-ARITHMETIC': '10 % of 100, and 100 / 1.1, recomputed; the regulation’s wording not seen',
  FINCAL: 'R package FinCal, documentation of cogs: 2 at 2, 3 at 3, 5 at 5, sell 7',
  OPENSTAXACCOUNTING:
    'OpenStax, Principles of Accounting, Volume 1: Financial Accounting, section 10.2, 2019; figures from memory, recomputed',
  INVENTORYEXERCISE:
    'public exercise on inventory costs: 5 at 37, 18 at 39, 13 at 40, 16 left; inputs seen, answers recomputed',
  DALAL1989:
    'Dalal, Fowlkes, Hoadley, Risk Analysis of the Space Shuttle, JASA 84 (1989) 945-957, 23 flights; data as printed in an open statistics text, coefficients from memory, recomputed',
  FIRTH1993:
    'Firth, Bias reduction of maximum likelihood estimates, Biometrika 80 (1993) 27-38; from memory',
  HEINZESCHEMPER:
    'Heinze, Schemper, A solution to the problem of separation in logistic regression, Statistics in Medicine 21 (2002) 2409-2419; from memory',
  FIRTHEXAMPLE:
    'Kleinman, Horton, SAS and R, example 8.15: Firth logistic regression, 2010; output of SAS as quoted in public code',
  ALBERTANDERSON:
    'Albert, Anderson, On the existence of maximum likelihood estimates in logistic regression models, Biometrika 71 (1984) 1-10; from memory',
  INTERFACEBOND:
    'ASME J. Manufacturing Science and Engineering 146(10) 101001, 2024, abstract: strength of two-shot joints goes with the temperature of the interface',
  SEAMPRACTICE:
    'PVC Geomembrane Institute, technical bulletin of December 1998 and seam study, phase II: peel tells a seam’s quality',
  CASTINGATLAS:
    'investment-casting defect atlas, undated: a cold shut is two fronts too cool to fuse',
  AIRRELEASE:
    'J. Vinyl Technology, 1980, doi 10.1002/vnl.730020405, abstract: air release of plastisols',
  COLORMIGRATION:
    'EN 14469-4:2004, scope: bleeding of colorants in plasticized PVC, a colored sheet pressed warm on a white one',
  FIELLER1954:
    'Fieller, Some problems in interval estimation, J. R. Statist. Soc. B 16 (1954) 175-185; from memory',
  SCIPYLOGISTIC:
    'independent maximization of the same penalized likelihood: Python, scipy 1.17.1, Nelder-Mead and brentq',
  FISHERTHOMPSON1963:
    'Fisher, Thompson, in Industrial Scheduling, 1963, 6 x 6 instance ft06; best 55, proved again by a general constraint solver',
  LAWRENCE1984:
    'Lawrence, resource constrained project scheduling, 1984, 10 x 5 instance la01; best 666, proved again by a general constraint solver',
  PSPLIB:
    'Kolisch, Sprecher, PSPLIB, European J. Oper. Res. 96 (1996) 205-216, instance j301_1; best 43, proved again by a general constraint solver, longest path 38',
  JOBSHOPMANUAL:
    'documentation of a general open-source optimization suite, job shop of three jobs; best 11',
  HEIZERRENDER:
    'Heizer, Render, Operations Management, two work centers in a row by Johnson’s rule; inputs and answer from memory, 35 recomputed by trying every order',
  CPMCOURSE:
    'open course module in transport engineering, critical path of 14 activities; 41 and paths as printed, floats recomputed',
  CPMEXAMPLE: 'public solved example of a critical path of 7 activities: 16, A-B-D-E-G',
  KOLISCH1996:
    'Kolisch, Serial and parallel resource-constrained project scheduling methods revisited, European J. Oper. Res. 90 (1996) 320-333; from memory',
  FRANCK2001:
    'Franck, Neumann, Schwindt, Truncated branch-and-bound, schedule-construction, and schedule-improvement procedures for resource-constrained project scheduling, OR Spektrum 23 (2001) 297-324; from memory',
  BARTUSCH1988:
    'Bartusch, Mohring, Radermacher, Scheduling project networks with resource constraints and time windows, Annals of Oper. Res. 16 (1988) 201-240; from memory',
  LIWILLIS1992:
    'Li, Willis, An iterative scheduling technique for resource-constrained project scheduling, European J. Oper. Res. 56 (1992) 370-379; from memory',
  BURKEBYKOV2017:
    'Burke, Bykov, The late acceptance hill-climbing heuristic, European J. Oper. Res. 258 (2017) 70-78; from memory',
  CARLIER1982:
    'Carlier, The one-machine sequencing problem, European J. Oper. Res. 11 (1982) 42-47; from memory',
  KELLEYWALKER1959: 'Kelley, Walker, Critical-path planning and scheduling, 1959; from memory',
  TARJAN1972:
    'Tarjan, Depth-first search and linear graph algorithms, SIAM J. Comput. 1 (1972) 146-160; from memory',
  MARSAGLIA2003: 'Marsaglia, Xorshift RNGs, J. Statistical Software 8 (2003) 14; from memory',
  WESTERNELECTRIC:
    'Western Electric Company, Statistical Quality Control Handbook, 1956, zone tests; as quoted on public pages',
  MONTGOMERY:
    'Montgomery, Introduction to Statistical Quality Control, factors for control charts of variables; from memory',
  CHAMPWOODALL:
    'Champ, Woodall, Exact results for Shewhart control charts with supplementary runs rules, Technometrics 29 (1987) 393-399; the 91.75 as quoted on public pages',
  ARMITAGE1955:
    'Armitage, Tests for linear trends in proportions and frequencies, Biometrics 11 (1955) 375-386; from memory',
  AGRESTI:
    'Agresti, Categorical Data Analysis, 2nd ed., 2002, section 3.4.5, malformations by alcohol; counts and 6.57 from memory, recomputed',
  MCCULLAGHNELDER:
    'McCullagh, Nelder, Generalized Linear Models, 2nd ed., 1989, section 4.5; from memory',
  NPLESSON:
    'public lesson in R on a standard control-chart package: 50 lots of 200, center 7.14, upper limit 15.01',
} as const satisfies Readonly<Record<string, string>>;

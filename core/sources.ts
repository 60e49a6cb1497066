/**
 * Every published source once. Formulas, checks and "why" panels cite the key. `common practice` and `from memory` are marks, not keys:
 * they say that there is no source to read.
 */
export const sources = {
  'abramowitz-stegun-1964':
    'M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, National Bureau of Standards 1964, sections 6.3 and 6.4 (from memory).',
  'allen-perkins-1951':
    'H. J. Allen, E. W. Perkins, A study of effects of viscosity on flow over slender inclined bodies of revolution, NACA Report 1048, 1951 (from memory): the cross-flow force of a slender body.',
  'andrew-1979':
    'A. M. Andrew, Another efficient algorithm for convex hulls in two dimensions, Information Processing Letters 9 (1979) 216-219; thinned beforehand after S. G. Akl, G. T. Toussaint, the same 7 (1978) 219-222.',
  'astm-f1435':
    'ASTM F1435, Standard Specification for the front-of-centre balance point of arrows, after AMO/ATA: 100 (A - L/2)/L with A and L from the throat of the nock (scope read in a public copy; formula from memory).',
  'astm-f1880':
    'ASTM F1880, Standard Test Method for Determination of Percent of Let-Off for Archery Bows; draw length after AMO/ATA.',
  'astm-f2031':
    'ASTM F2031, Standard Test Method for Measurement of Arrow Shaft Static Spine (Stiffness): span 28 in, load 880 g (1.94 lb).',
  'ata-bow-105': 'AMO/ATA standards: bow lengths and draw length (AMO FP-3), speed rating at 5 grains per pound (BOW-105).',
  'barrowman-1967':
    'J. S. Barrowman, The Practical Calculation of the Aerodynamic Characteristics of Slender Finned Vehicles, M.S. thesis, Catholic University of America, March 1967 (NASA NTRS 20010047838): fins in subsonic flow, interference of the body, slender noses (formulas from memory, held against two theories of wings).',
  'bathe-2014':
    'K. J. Bathe, Finite Element Procedures, 2nd edition, 2014: Hermitian beam elements, consistent mass, subspace iteration (from memory).',
  'berrut-trefethen-2004':
    'J.-P. Berrut, L. N. Trefethen, Barycentric Lagrange interpolation, SIAM Review 46 (2004) 501-517 (from memory).',
  'bilge-morgul-2023':
    'H. Bilge, Ö. K. Morgül, Analytical and experimental investigation of the rotary inertia effects of unequal end masses on transverse vibration of beams, Applied Sciences 13 (2023) 2518, doi:10.3390/app13042518.',
  'birge-1932':
    'R. T. Birge, The calculation of errors by the method of least squares, Physical Review 40 (1932) 207-227 (from memory): errors widened by the ratio of outer to inner consistency.',
  'blevins-1979': 'R. D. Blevins, Formulas for Natural Frequency and Mode Shape, Van Nostrand Reinhold 1979: free-free beam.',
  'british-rule-302':
    'British national target rules, rule 302, 2014 copy: overshoot and side ground for bows shot with the fingers; check the current edition and the local range.',
  'brown-forsythe-1974':
    'M. B. Brown, A. B. Forsythe, The small sample behavior of some statistics which test the equality of several means, Technometrics 16 (1974) 129-132 (from memory).',
  'brunner-dette-munk-1997':
    'E. Brunner, H. Dette, A. Munk, Box-type approximations in nonparametric factorial designs, Journal of the American Statistical Association 92 (1997) 1494-1502 (from memory): the spirit of the shape correction; the pooled, bias-corrected shape is ours.',
  'chan-golub-leveque-1983':
    'T. F. Chan, G. H. Golub, R. J. LeVeque, Algorithms for computing the sample variance: analysis and recommendations, The American Statistician 37 (1983) 242-247.',
  'clopper-pearson-1934':
    'C. J. Clopper, E. S. Pearson, The use of confidence or fiducial limits illustrated in the case of the binomial, Biometrika 26 (1934) 404-413 (from memory).',
  'dowell-1971':
    'M. Dowell, P. Jarratt, A modified regula falsi method for computing the root of an equation, BIT 11 (1971) 168-174: the Illinois rule.',
  'draper-smith-1998':
    'N. R. Draper, H. Smith, Applied Regression Analysis, 3rd edition, Wiley 1998 (from memory): weighted least squares, pure error and lack of fit.',
  'fieller-1954':
    'E. C. Fieller, Some problems in interval estimation, Journal of the Royal Statistical Society, Series B 16 (1954) 175-185 (from memory): the interval of a ratio.',
  'fischler-bolles-1981':
    'M. A. Fischler, R. C. Bolles, Random sample consensus, Communications of the ACM 24 (1981) 381-395 (from memory).',
  'fitzgibbon-1999':
    'A. Fitzgibbon, M. Pilu, R. B. Fisher, Direct least square fitting of ellipses, IEEE Transactions on Pattern Analysis and Machine Intelligence 21 (1999) 476-480 (from memory).',
  'fritsch-butland-1984':
    'F. N. Fritsch, J. Butland, A method for constructing local monotone piecewise cubic interpolants, SIAM Journal on Scientific and Statistical Computing 5 (1984) 300-304.',
  'goldberg-levine-1946':
    'H. Goldberg, H. Levine, Approximate formulas for the percentage points and normalization of t and chi-square, Annals of Mathematical Statistics 17 (1946) 216-225.',
  'golub-van-loan-2013':
    'G. H. Golub, C. F. Van Loan, Matrix Computations, 4th edition, Johns Hopkins 2013, section 4.3: banded Cholesky factor (from memory).',
  'grubbs-1964': 'F. E. Grubbs, Statistical Measures of Accuracy for Riflemen and Missile Engineers, 1964.',
  'hairer-1993':
    'E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, Nonstiff Problems, 2nd edition, Springer 1993, sections II.4 to II.6: the pair of Dormand and Prince, its step control and its continuous extension.',
  'halir-flusser-1998':
    'R. Halíř, J. Flusser, Numerically stable direct least squares fitting of ellipses, WSCG 1998 (from memory).',
  'hartley-zisserman-2004':
    'R. Hartley, A. Zisserman, Multiple View Geometry in Computer Vision, 2nd edition, Cambridge 2004, chapters 2 and 4: homographies, the normalised direct linear transform, the camera matrix (from memory).',
  'hickman-1947':
    'C. N. Hickman, F. Nagler, P. E. Klopsteg, Archery: The Technical Side, 1947: string mass, efficiency, virtual mass.',
  'holland-welsch-1977':
    'P. W. Holland, R. E. Welsch, Robust regression using iteratively reweighted least-squares, Communications in Statistics A6 (1977) 813-827 (from memory): Tukey’s constant 4.685.',
  'howard-2021':
    'S. R. Howard, A. Ramdas, J. McAuliffe, J. Sekhon, Time-uniform, nonparametric, nonasymptotic confidence sequences, Annals of Statistics 49 (2021) 1055-1080.',
  'iec-61966-2-1':
    'IEC 61966-2-1:1999, Default RGB colour space, sRGB (from memory): from a picture’s numbers to amounts of light.',
  'james-1954':
    'G. S. James, Tests of linear hypotheses in univariate and multivariate analysis when the ratios of the population variances are unknown, Biometrika 41 (1954) 19-43.',
  'jcgm-100':
    'JCGM 100:2008, Evaluation of measurement data: Guide to the expression of uncertainty in measurement, sections 5.1 and 5.2.',
  'jennison-turnbull-2000':
    'C. Jennison, B. W. Turnbull, Group Sequential Methods with Applications to Clinical Trials, Chapman & Hall/CRC 2000 (from memory): the recursion; in the plane after the same, Biometrika 78 (1991) 133-141.',
  'jcgm-101':
    'JCGM 101:2008, Evaluation of measurement data: propagation of distributions using a Monte Carlo method, section 9.4 (from memory).',
  'johnson-kotz-balakrishnan-1995':
    'N. L. Johnson, S. Kotz, N. Balakrishnan, Continuous Univariate Distributions, volume 2, 2nd edition, Wiley 1995: beta, F, t and noncentral F.',
  'johnson-wichern-2007':
    'R. A. Johnson, D. W. Wichern, Applied Multivariate Statistical Analysis, 6th edition, Pearson 2007, chapters 5 and 6.',
  'kanatani-2016':
    'K. Kanatani, Y. Sugaya, Y. Kanazawa, Ellipse Fitting for Computer Vision, Morgan & Claypool 2016 (from memory): errors to first order over their gradient, weights renewed.',
  'kiefer-1953':
    'J. Kiefer, Sequential minimax search for a maximum, Proceedings of the American Mathematical Society 4 (1953) 502-506.',
  'klopsteg-1943': 'P. E. Klopsteg, Physics of bows and arrows, American Journal of Physics 11 (1943) 175-192.',
  'krishnamoorthy-yu-2004':
    'K. Krishnamoorthy, J. Yu, Modified Nel and Van der Merwe test for the multivariate Behrens-Fisher problem, Statistics & Probability Letters 66 (2004) 161-169.',
  'levene-1960':
    'H. Levene, Robust tests for equality of variances, in I. Olkin (ed.), Contributions to Probability and Statistics, Stanford 1960; on distances from a centre after M. J. Anderson, Biometrics 62 (2006) 245-253.',
  'marcus-peritz-gabriel-1976':
    'R. Marcus, E. Peritz, K. R. Gabriel, On closed testing procedures with special reference to ordered analysis of variance, Biometrika 63 (1976) 655-660 (from memory).',
  'marquardt-1963':
    'D. W. Marquardt, An algorithm for least-squares estimation of nonlinear parameters, Journal of the Society for Industrial and Applied Mathematics 11 (1963) 431-441 (from memory).',
  'marsaglia-bray-1964':
    'G. Marsaglia, T. A. Bray, A convenient method for generating normal variables, SIAM Review 6 (1964) 260-264 (from memory).',
  'mauchly-1940':
    'J. W. Mauchly, Significance test for sphericity of a normal n-variate distribution, Annals of Mathematical Statistics 11 (1940) 204-209.',
  'mehrotra-1997':
    'D. V. Mehrotra, Improving the Brown-Forsythe solution to the generalized Behrens-Fisher problem, Communications in Statistics - Simulation and Computation 26 (1997) 1139-1145 (from memory).',
  'mcshane-kelley-reno-1953':
    'E. J. McShane, J. L. Kelley, F. V. Reno, Exterior Ballistics, University of Denver Press 1953 (from memory): the hodograph of a flight under drag as the square of the speed, and quadratures over it.',
  'miyazaki-2013': 'T. Miyazaki and others, Aerodynamic properties of an archery arrow, Sports Engineering 16 (2013) 43-54.',
  'montgomery-2013':
    'D. C. Montgomery, Introduction to Statistical Quality Control, 7th edition, Wiley 2013, appendix VI: factors c4 and d2.',
  'nist-sp811':
    'A. Thompson, B. N. Taylor, Guide for the Use of the International System of Units (SI), NIST Special Publication 811, 2008 edition, appendix B: conversion factors.',
  'nist-strd': 'NIST, Statistical Reference Datasets, www.itl.nist.gov/div898/strd: certified values.',
  'obrien-fleming-1979':
    "P. C. O'Brien, T. R. Fleming, A multiple testing procedure for clinical trials, Biometrics 35 (1979) 549-556 (from memory).",
  'ortiz-2020':
    'J. Ortiz and others, Experimental and computational study of archery arrows fletched with straight vanes, Proceedings 49 (2020) 56, doi:10.3390/proceedings2020049056.',
  'perez-ortiz-2024':
    'M. F. Pérez-Ortiz, T. Lardy, R. de Heide, P. D. Grünwald, E-statistics, group invariance and anytime-valid testing, Annals of Statistics 52 (2024) 1410-1432: the theory; the form for two centres in the plane is ours.',
  'patnaik-1950':
    'P. B. Patnaik, The use of mean range as an estimator of variance in statistical tests, Biometrika 37 (1950) 78-87 (from memory): a chi law in place of the law of a range.',
  'picard-2008':
    'A. Picard, R. S. Davis, M. Gläser, K. Fujii, Revised formula for the density of moist air (CIPM-2007), Metrologia 45 (2008) 149-155.',
  'pitman-1939':
    'E. J. G. Pitman, A note on normal correlation, Biometrika 31 (1939) 9-12; W. A. Morgan, the same 13-19 (from memory): two variances of correlated figures.',
  'pocock-1977':
    'S. J. Pocock, Group sequential methods in the design and analysis of clinical trials, Biometrika 64 (1977) 191-199 (from memory).',
  'seber-1984': 'G. A. F. Seber, Multivariate Observations, Wiley 1984, example 3.7.',
  'shamos-1978': 'M. I. Shamos, Computational Geometry, doctoral thesis, Yale University 1978: rotating calipers.',
  'smyth-2004':
    'G. K. Smyth, Linear models and empirical Bayes methods for assessing differential expression in microarray experiments, Statistical Applications in Genetics and Molecular Biology 3 (2004) article 3.',
  'timoshenko-gere':
    'S. P. Timoshenko, J. M. Gere, Theory of Elastic Stability, 2nd edition, McGraw-Hill 1961: columns under distributed thrust.',
  'tuijn-kooi-1992':
    "C. Tuijn, B. W. Kooi, The measurement of arrow velocities in the students' laboratory, European Journal of Physics 13 (1992) 127-134, Table I.",
  'us-standard-atmosphere-1976': 'U.S. Standard Atmosphere, 1976, NOAA, NASA and USAF, Washington 1976.',
  'vardi-zhang-2000':
    'Y. Vardi, C.-H. Zhang, The multivariate L1-median and associated data depth, Proceedings of the National Academy of Sciences 97 (2000) 1423-1426 (from memory): when a given place is the median.',
  'wa-rules': 'World Archery rule book, target faces and scoring; verify against the current edition.',
  'welch-1947':
    "B. L. Welch, The generalization of Student's problem when several different population variances are involved, Biometrika 34 (1947) 28-35.",
  'welch-1951':
    'B. L. Welch, On the comparison of several mean values: an alternative approach, Biometrika 38 (1951) 330-336 (from memory): groups weighed by their own spreads.',
  'wmo-beaufort':
    'World Meteorological Organization, Manual on Codes and Guide to Instruments and Methods of Observation: the scale of wind force of Beaufort, speeds at 10 m over open ground (from memory).',
  'young-budynas-2002':
    'W. C. Young, R. G. Budynas, Roark’s Formulas for Stress and Strain, 7th edition, McGraw-Hill 2002: second moments of sections (from memory).',
} as const satisfies Record<string, string>;

export type SourceKey = keyof typeof sources;

import { create, createUnitDependencies, unitDependencies } from "mathjs";

const { createUnit, unit, Unit } = create({ ...createUnitDependencies, ...unitDependencies });

/** Exact size of a foot of the United States survey: 1200/3937 m (NIST SP 811:2008, B.6). */
const surveyFoot = 1200 / 3937;

/** Light travels 299 792 458 m in a second and a Julian year has 31 557 600 s (NIST SP 811:2008, B.8, light year). */
const lightYear = 299_792_458 * 31_557_600;

/** 648 000/π astronomical units of 149 597 870 700 m (IAU 2012 resolution B2, IAU 2015 resolution B2). */
const parsec = (648_000 / Math.PI) * 149_597_870_700;

const withPrefixes = (definition: string) => ({ definition, prefixes: "short" as const });

// What the library lacks, and what it keeps with fewer digits than the definition has. Factors are those of
// NIST SP 811:2008, appendix B (exact ones as defined there), where nothing else is named.
// A dimension of its own: whichever currency a notebook is in, it adds up with nothing else.
createUnit("money");

createUnit(
  {
    one: "1 m/m",
    revolution: "1 cycle",
    knot: "1852 m/h",
    admiraltyknot: "6080 ft/h",
    nauticalmile: "1852 m",
    surveymile: unit(5280 * surveyFoot, "m"),
    picapoint: unit(1 / 72, "in"),
    pica: unit(1 / 6, "in"),
    // 45 inches, the cloth measure that OpenFormula names.
    ell: "45 in",
    lightyear: withPrefixes(`${lightYear} m`),
    parsec: withPrefixes(`${parsec} m`),
    acre: "43560 ft^2",
    surveyacre: unit(43_560 * surveyFoot * surveyFoot, "m^2"),
    are: withPrefixes("100 m^2"),
    // 2500 m2, the North German measure that OpenFormula names.
    morgen: "2500 m^2",
    spoontea: unit(1 / 6, "fluidounce"),
    spoontable: unit(1 / 2, "fluidounce"),
    imperialgallon: "4.54609 l",
    imperialquart: unit(4.54609 / 4, "l"),
    imperialpint: unit(4.54609 / 8, "l"),
    bushel: "2150.42 in^3",
    registerton: "100 ft^3",
    measurementton: "40 ft^3",
    slug: "1 lbf s^2/ft",
    longton: "2240 lbm",
    longhundredweight: "112 lbm",
    // CODATA 2018.
    dalton: withPrefixes("1.66053906660e-27 kg"),
    pond: withPrefixes("0.00980665 N"),
    psi: "1 lbf/in^2",
    torr: withPrefixes(`${101_325 / 760} Pa`),
    // Conventional: density 13 595.1 kg/m3, gravity 9.806 65 m/s2.
    mmHg: withPrefixes(`${13.5951 * 9.80665} Pa`),
    thermocalorie: withPrefixes("4.184 J"),
    tablecalorie: withPrefixes("4.1868 J"),
    horsepower: "550 ft lbf/s",
    metrichorsepower: "75 kgf m/s",
    horsepowerhour: "1980000 ft lbf",
    // Exact since the SI of 2019 (SI brochure, 9th edition).
    electronvolt: withPrefixes("1.602176634e-19 J"),
    gauss: withPrefixes("0.0001 T"),
    reaumur: { definition: "1.25 K", offset: 273.15 / 1.25 },
  },
  { override: true },
);

export { unit };

/** Whether the library can read a unit with this name, prefix included. */
export const isKnown = (name: string): boolean => Unit.isValuelessUnit(name);

import { words } from "./arguments";

const greek: Readonly<Record<string, string>> = {
  alpha: "α",
  beta: "β",
  gamma: "γ",
  delta: "δ",
  epsilon: "ε",
  zeta: "ζ",
  eta: "η",
  theta: "θ",
  kappa: "κ",
  lambda: "λ",
  mu: "μ",
  nu: "ν",
  xi: "ξ",
  rho: "ρ",
  sigma: "σ",
  tau: "τ",
  phi: "φ",
  chi: "χ",
  psi: "ψ",
  omega: "ω",
  Delta: "Δ",
  Theta: "Θ",
  Sigma: "Σ",
  Phi: "Φ",
  Psi: "Ψ",
  Omega: "Ω",
  pi: "π",
};

/** A name of a formula in the parts in which it is set: letters or words, and what stands below the line. */
export interface SymbolName {
  readonly base: string;
  readonly below: string;
}

/**
 * `T20` is T with 20 below, `R_th` R with th below, `alpha` α, `halfBreadth` the words half breadth.
 */
export function symbolName(name: string): SymbolName {
  const [, stem = name, below = ""] = /^([A-Za-z]+?)_?(\d+)$/.exec(name) ?? /^([A-Za-z]+)_(\w+)$/.exec(name) ?? [];
  const letter = Object.hasOwn(greek, stem) ? greek[stem] : undefined;
  // `Rth` and `Re` are symbols of their own; a name that begins small is made of words.
  return { base: letter ?? (/^[a-z]./.test(stem) ? words(stem) : stem), below };
}

/** The same on one line: `T₂₀`. */
export function symbolText(name: string): string {
  const { base, below } = symbolName(name);
  if (/^\d+$/.test(below)) return base + [...below].map((digit) => "₀₁₂₃₄₅₆₇₈₉"[Number(digit)]).join("");
  return below ? `${base}_${below}` : base;
}

import type { Constant, Constants } from "../formula/definition";
import { wichura } from "./estimate-sources";

const coefficient = (value: number, place: string): Constant => ({
  value,
  unit: "1",
  about: `coefficient of the ${place}`,
  source: wichura,
});

const middle = (value: number): Constant => coefficient(value, "middle, above the line");
const middleBelow = (value: number): Constant => coefficient(value, "middle, below the line");
const tail = (value: number): Constant => coefficient(value, "tail, above the line");
const tailBelow = (value: number): Constant => coefficient(value, "tail, below the line");

/**
 * Quotients of polynomials for the standard normal quantile: a/b for shares within 0.425 of a half, c/d for the
 * tails down to a share of e^-25. The far tail of the algorithm lies outside the shares that are asked for here.
 */
export const normalQuantile = {
  reach: coefficient(0.425, "middle's reach on each side of a half"),
  square: coefficient(0.180625, "middle: its reach squared"),
  shift: coefficient(1.6, "tail: where its variable is 0"),
  a0: middle(3.3871328727963665),
  a1: middle(133.14166789178438),
  a2: middle(1971.5909503065513),
  a3: middle(13731.69376550946),
  a4: middle(45921.95393154987),
  a5: middle(67265.7709270087),
  a6: middle(33430.57558358813),
  a7: middle(2509.0809287301227),
  b1: middleBelow(42.31333070160091),
  b2: middleBelow(687.1870074920579),
  b3: middleBelow(5394.196021424751),
  b4: middleBelow(21213.794301586597),
  b5: middleBelow(39307.89580009271),
  b6: middleBelow(28729.085735721943),
  b7: middleBelow(5226.495278852854),
  c0: tail(1.4234371107496835),
  c1: tail(4.630337846156546),
  c2: tail(5.769497221460691),
  c3: tail(3.6478483247632045),
  c4: tail(1.2704582524523684),
  c5: tail(0.2417807251774506),
  c6: tail(0.022723844989269184),
  c7: tail(0.0007745450142783414),
  d1: tailBelow(2.053191626637759),
  d2: tailBelow(1.6763848301838038),
  d3: tailBelow(0.6897673349851),
  d4: tailBelow(0.14810397642748008),
  d5: tailBelow(0.015198666563616457),
  d6: tailBelow(0.0005475938084995345),
  d7: tailBelow(1.0507500716444169e-9),
} as const satisfies Constants;

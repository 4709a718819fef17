import { defineFunction } from "../../formula/define";
import { identity } from "../../formula/source";
import { diameter, entrance, flare } from "./bore";

export const tunnelHoleEdge = defineFunction({
  name: "TUNNEL.HOLEEDGE",
  title: "Length of the hole's edge",
  args: { diameter, entrance, flare },
  steps: [
    {
      kind: "algebra",
      symbol: "G",
      formula: "sqrt(tan(radians(entrance)) * tan(radians(entrance)) + tan(radians(flare)) * tan(radians(flare)))",
      unit: "1",
      why: "steepest slope of the skin against the tunnel's end",
    },
    {
      kind: "algebra",
      symbol: "a",
      formula: "diameter / 2 * sqrt(1 + G * G)",
      unit: "mm",
      why: "half the long axis of the ellipse",
    },
    {
      kind: "algebra",
      symbol: "m",
      formula: "G * G / (1 + G * G)",
      unit: "1",
      why: "square of the ellipse's eccentricity",
    },
    // Over the angles allowed here m reaches 0.9134 (entrance 70, flare 60). There 16 points of a quarter are
    // 9e-12 off, 18 points 7e-13, 20 points 5e-14 and 24 points exact to the last bit; 20 is the least number
    // that keeps 1e-12 with something to spare.
    {
      kind: "mean",
      symbol: "q",
      angle: "theta",
      from: "0",
      to: "pi / 2",
      points: 20,
      term: "sqrt(1 - m * sin(theta) * sin(theta))",
      unit: "1",
      why: "elliptic integral E(m) over a quarter, divided by π/2",
    },
    {
      kind: "algebra",
      symbol: "P",
      formula: "2 * pi * a * q",
      unit: "mm",
      why: "4 a E(m), the perimeter of an ellipse",
    },
  ],
  valid: "Measured on a flat skin, with the outer diameter of the tube.",
  sources: [identity("Perimeter of an ellipse: 4 a E(m), DLMF 19.9.9")],
  examples: [
    {
      given: { diameter: 185, entrance: 20, flare: 15 },
      expect: 609.8253,
      within: 5e-5,
      source: identity("4·101.5088·E(0.169622) = 609.8253, also by adding up short chords"),
    },
    {
      given: { diameter: 200, entrance: 60, flare: 0 },
      expect: 968.8448220548,
      within: 5e-10,
      source: identity("ellipse of half axes 2 and 1: 9.688448220548, times 100"),
    },
    {
      given: { diameter: 185, entrance: 0, flare: 0 },
      expect: 581.1946,
      within: 5e-5,
      source: identity("π·185 = 581.1946"),
    },
  ],
});

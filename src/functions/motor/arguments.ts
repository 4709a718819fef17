/** Arguments of a brushed motor behind a resistance; voltage and current are those of one rated point. */
export const motorArguments = {
  open: { unit: "V", about: "battery at rest", min: 0, aboveMin: true, max: 1000 },
  outside: { unit: "ohm", about: "battery, conductors, joints, isolator and fuse together", min: 0, max: 1000 },
  ratedVolts: { unit: "V", about: "at the motor's terminals at its rated current", min: 0, aboveMin: true, max: 1000 },
  ratedCurrent: { unit: "A", about: "at that voltage", min: 0, aboveMin: true, max: 10000 },
  motor: { unit: "ohm", about: "winding and brushes", min: 0, max: 1000 },
} as const;

/** The usual cautions for this family, each beside the numbers that raise its hazard. */

export const decide = "Local codes and licensed practice decide.";

export const liveCaution = `A battery drives thousands of amperes through a slipped spanner: take the negative off first, cover live studs, wear no metal (29 CFR 1915.181, ISO 13297). ${decide}`;

export const heatCaution = `A conductor that is too thin burns its insulation and can start a fire: fuse it at the source and keep every lug, switch and fuse holder within its own temperature (33 CFR 183.455, ISO 13297). ${decide}`;

export const gasCaution = `Charging a battery gives off hydrogen, which a spark sets off: lead it out of the boat, keep switches and fuses out of the battery space, cover live studs (33 CFR 183.420, EN 50272-2). ${decide}`;

export const startCaution = `A thruster motor can start by itself: isolate, lock and tag before a hand goes into the tunnel (29 CFR 1915.89). ${decide}`;

export const waterCaution = `Water finds a tired seal: stay on the slings until the bow is proved dry, with a pump at hand. ${decide}`;

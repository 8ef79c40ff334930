/** How a body stands in space: the quaternion that turns body axes (x forward, y right, z down) into those of the earth. */
export type Attitude = readonly [w: number, x: number, y: number, z: number];

/** Angles in the usual order of flight mechanics: heading, then pitch nose-up, then bank to the right; radians. */
export interface Angles {
  readonly bank: number;
  readonly pitch: number;
  readonly heading: number;
}

/** Source: B. Etkin, L. D. Reid, Dynamics of Flight, 3rd ed. 1996, section 4.3 and its quaternion form; from memory. */
export function attitudeOf({ bank, pitch, heading }: Angles): Attitude {
  const [cb, sb] = [Math.cos(bank / 2), Math.sin(bank / 2)];
  const [cp, sp] = [Math.cos(pitch / 2), Math.sin(pitch / 2)];
  const [ch, sh] = [Math.cos(heading / 2), Math.sin(heading / 2)];
  return [
    cb * cp * ch + sb * sp * sh,
    sb * cp * ch - cb * sp * sh,
    cb * sp * ch + sb * cp * sh,
    cb * cp * sh - sb * sp * ch,
  ];
}

/** The angles of an attitude. Straight up or down, where bank and heading are one, all of it is told as bank. */
export function anglesOf([w, x, y, z]: Attitude): Angles {
  const sinPitch = 2 * (w * y - x * z);
  if (Math.abs(sinPitch) > 1 - 1e-12) {
    return { bank: 2 * Math.atan2(x, w), pitch: (Math.sign(sinPitch) * Math.PI) / 2, heading: 0 };
  }
  return {
    bank: Math.atan2(2 * (w * x + y * z), 1 - 2 * (x * x + y * y)),
    pitch: Math.asin(sinPitch),
    heading: Math.atan2(2 * (w * z + x * y), 1 - 2 * (y * y + z * z)),
  };
}

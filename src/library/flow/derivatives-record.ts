import { numberText } from "../number-text.ts";
import { number, record, type ValueOf } from "../spec.ts";

const perAngle = (symbol: string, what: string) => number("1/rad", `${symbol}: ${what}`);
const perRate = (symbol: string, what: string) => number("1", `${symbol}: ${what}`);

/**
 * Stability derivatives: of lift, drag, side force, rolling, pitching and yawing moment; by angle of attack (alpha),
 * sideslip (beta, nose left of the way, air from the right), and turning p b/2V, q c/2V, r b/2V (right wing down, nose
 * up, nose right). Moments about the balance point, positive like the turning.
 */
export const derivativesRecord = record(
  "derivatives",
  "stability derivatives about the balance point",
  {
    lift_alpha: perAngle("C_Lα", "lift per angle of attack"),
    drag_alpha: perAngle("C_Dα", "induced drag per angle of attack"),
    pitch_alpha: perAngle("C_mα", "pitching moment per angle of attack; negative is stable"),
    lift_q: perRate("C_Lq", "lift per pitching"),
    pitch_q: perRate("C_mq", "pitching moment per pitching: pitch damping"),
    lift_alpha_rate: perRate("C_Lα̇", "lift per rate of the angle of attack: the downwash arrives late"),
    pitch_alpha_rate: perRate("C_mα̇", "pitching moment per rate of the angle of attack: the downwash arrives late"),
    side_beta: perAngle("C_Yβ", "side force per sideslip"),
    roll_beta: perAngle("C_lβ", "rolling moment per sideslip: effect of the dihedral; negative rolls out of the slip"),
    yaw_beta: perAngle("C_nβ", "yawing moment per sideslip; positive turns the nose into the wind"),
    side_p: perRate("C_Yp", "side force per rolling"),
    roll_p: perRate("C_lp", "rolling moment per rolling: roll damping"),
    yaw_p: perRate("C_np", "yawing moment per rolling"),
    side_r: perRate("C_Yr", "side force per yawing"),
    roll_r: perRate("C_lr", "rolling moment per yawing"),
    yaw_r: perRate("C_nr", "yawing moment per yawing: yaw damping"),
    lift_tailplane: perAngle("C_Lδ", "lift per angle of the tailplane, nose up"),
    pitch_tailplane: perAngle("C_mδ", "pitching moment per angle of the tailplane, nose up"),
    side_fin: perAngle("C_Yδ", "side force per angle of the fin, nose left"),
    roll_fin: perAngle("C_lδ", "rolling moment per angle of the fin, nose left"),
    yaw_fin: perAngle("C_nδ", "yawing moment per angle of the fin, nose left"),
  },
  ({ lift_alpha, roll_beta, yaw_beta }) =>
    `lift ${numberText(lift_alpha, "1/rad")}, roll ${numberText(roll_beta, "1/rad")} and yaw ${numberText(yaw_beta, "1/rad")} per sideslip`,
);

/** The value of a set of derivatives in SI. */
export type Derivatives = ValueOf<typeof derivativesRecord>;

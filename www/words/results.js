// What the results are called, by their place in the report, and their units.

/** @typedef {{ label: string, unit: string }} ResultWords */

const SERVICE = "/runs/*/service/";

/** @type {Record<string, ResultWords>} */
const TABLE = {
  [`${SERVICE}heat/limit_c`]: { label: "Warmest coolant", unit: "°C" },
  [`${SERVICE}heat/growth_mm`]: { label: "Growth from fitted to hottest", unit: "mm" },
  [`${SERVICE}strength/allowed_kpa`]: { label: "Pressure", unit: "kPa" },
  [`${SERVICE}strength/utilisation`]: { label: "Stress at the bore", unit: "MPa" },
  [`${SERVICE}strength/hoop_mpa`]: { label: "in a straight", unit: "MPa" },
  [`${SERVICE}strength/bend_factor`]: { label: "times that inside the tightest bend", unit: "" },
  [`${SERVICE}strength/factors`]: { label: "What strength is allowed", unit: "MPa" },
  [`${SERVICE}seals/*/squeeze_percent`]: { label: "Squeeze of the ring", unit: "%" },
  [`${SERVICE}seals/*/best_outer_diameter`]: { label: "best on a tube of", unit: "mm" },
  [`${SERVICE}flow/loss_kpa`]: { label: "Pressure loss", unit: "kPa" },
  [`${SERVICE}flow/straights_kpa`]: { label: "straights", unit: "kPa" },
  [`${SERVICE}flow/bends_kpa`]: { label: "bends", unit: "kPa" },
  [`${SERVICE}flow/coils_kpa`]: { label: "coils", unit: "kPa" },
  [`${SERVICE}flow/curves_kpa`]: { label: "curves", unit: "kPa" },
  [`${SERVICE}flow/velocity_m_per_s`]: { label: "Velocity", unit: "m/s" },
  [`${SERVICE}flow/reynolds`]: { label: "Reynolds number", unit: "" },
  [`${SERVICE}high_points`]: { label: "Keeps air when filled", unit: "mL" },
  [`${SERVICE}low_points`]: { label: "Keeps coolant when drained", unit: "mL" },
};

/**
 * The words of one of a run's results in service.
 * @param {string} key its place under the run's `service`, with `*` for a position in a list
 * @returns {ResultWords}
 */
export function serviceWords(key) {
  return TABLE[SERVICE + key] ?? { label: key, unit: "" };
}

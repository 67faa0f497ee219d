//! Writes random points of the physics with the engine's values at them, for judges that know nothing of the engine.
//!
//!     cargo run --example physics -- OUT COUNT SEED
//!
//! OUT becomes a JSON file `{ "points": [ { "kind", "given": { ... }, "found": { ... } } ] }`, the kinds in turn. Each point
//! is inside the range that the engine states for its formula.

use core::f64::consts::{FRAC_PI_4, PI};
use serde_json::{Value, json};
use tubewright_core::coupon::{lengths, sizes};
use tubewright_core::design::Reading;
use tubewright_core::flow::{
    Bend, Conditions, Coolant, Course, Fluid, Glycol, Pump, Stretch, contraction_factor, critical_reynolds_ito,
    critical_reynolds_schmidt, critical_reynolds_srinivasan, curved_friction, expansion_factor, ito_bend_factor,
    operating_point, quadratic_drop, run_loss, straight_friction, water,
};
use tubewright_core::strategies::Chance;

type Fault = Box<dyn std::error::Error>;
type Made = Result<(Value, Value), Fault>;

type Make = fn(&mut Chance) -> Made;

/// Each kind's name and how a point of it is made.
const KINDS: [(&str, Make); 11] = [
    ("water", of_water),
    ("mixture", of_mixture),
    ("straight", of_straight),
    ("laminar coil", of_laminar_coil),
    ("turbulent coil", of_turbulent_coil),
    ("critical", of_critical),
    ("bend", of_bend),
    ("area", of_area),
    ("pump", of_pump),
    ("loop", of_loop),
    ("readings", of_readings),
];

fn main() -> Result<(), Fault> {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [file, count, seed] = &args[..] else {
        return Err("name a file to write, how many points, and a seed".into());
    };
    let seed: u64 = seed.parse()?;
    // Each kind draws from a chance of its own, so that another kind leaves its points as they are.
    let mut kinds: Vec<_> = (seed..).step_by(1 << 20).map(Chance::of).zip(KINDS).collect();
    let mut points = Vec::new();
    for index in 0..count.parse()? {
        let next = index % kinds.len();
        let (chance, (kind, make)) = &mut kinds[next];
        let (given, found) = make(chance)?;
        points.push(json!({ "kind": kind, "given": given, "found": found }));
    }
    if let Some(folder) = std::path::Path::new(file).parent() {
        std::fs::create_dir_all(folder)?;
    }
    std::fs::write(file, serde_json::to_string(&json!({ "points": points }))?)?;
    println!("{} points in {file}", points.len());
    Ok(())
}

fn told(fluid: &Fluid) -> Value {
    json!({ "density": fluid.density, "viscosity": fluid.viscosity, "specific_heat": fluid.specific_heat })
}

fn of_water(chance: &mut Chance) -> Made {
    let celsius = chance.from(0.01, 99.0);
    Ok((json!({ "celsius": celsius }), told(&water(celsius)?)))
}

fn of_mixture(chance: &mut Chance) -> Made {
    let glycol = chance.pick(&[Glycol::Ethylene, Glycol::Propylene]);
    let mass_fraction = chance.from(0.0, 0.6);
    let celsius = chance.from(glycol.freezing(mass_fraction)?, 99.0);
    let found = Coolant::Mixture { glycol, mass_fraction }.at(celsius)?;
    let name = if glycol == Glycol::Ethylene { "ethylene" } else { "propylene" };
    let mut found = told(&found);
    found["freezing"] = glycol.freezing(mass_fraction)?.into();
    Ok((json!({ "glycol": name, "mass_fraction": mass_fraction, "celsius": celsius }), found))
}

fn of_straight(chance: &mut Chance) -> Made {
    let re = if chance.once_in(4) { chance.scale(1.0, 2300.0) } else { chance.scale(4000.0, 1e8) };
    let rough = if chance.once_in(3) { 0.0 } else { chance.scale(1e-6, 0.05) };
    let found = straight_friction(re, rough)?;
    Ok((json!({ "re": re, "rough": rough }), json!({ "friction": found.nominal })))
}

fn of_laminar_coil(chance: &mut Chance) -> Made {
    let ratio = chance.scale(1e-3, 0.3);
    let dean = chance.scale(1.0, 2000.0);
    let re = (dean / ratio.sqrt()).min(2300.0);
    Ok((json!({ "re": re, "ratio": ratio }), json!({ "friction": curved_friction(re, ratio, 0.0)?.nominal })))
}

fn of_turbulent_coil(chance: &mut Chance) -> Made {
    let ratio = chance.scale(0.01, 0.14);
    let re = chance.scale(2e4, 1e5);
    Ok((json!({ "re": re, "ratio": ratio }), json!({ "friction": curved_friction(re, ratio, 0.0)?.nominal })))
}

fn of_critical(chance: &mut Chance) -> Made {
    let ratio = chance.scale(0.004, 0.1);
    let found = json!({
        "ito": critical_reynolds_ito(ratio), "schmidt": critical_reynolds_schmidt(ratio),
        "srinivasan": critical_reynolds_srinivasan(ratio),
    });
    Ok((json!({ "ratio": ratio }), found))
}

fn of_bend(chance: &mut Chance) -> Made {
    let (re, angle) = (chance.scale(2e4, 4e5), chance.from(FRAC_PI_4, PI));
    // Re (r/R)^2 of 91 or more, where the judge has Ito's own formula too.
    let most = (re / 91.0).sqrt() / 2.0;
    let slenderness = chance.from(1.0, most.min(20.0));
    let bend = Bend { radius: 10.0 * slenderness, angle }.factor(10.0, re, 0.0)?;
    let found = json!({ "factor": bend.nominal, "ito": ito_bend_factor(re, slenderness, angle) });
    Ok((json!({ "re": re, "slenderness": slenderness, "angle": angle }), found))
}

fn of_area(chance: &mut Chance) -> Made {
    let larger = chance.from(6.0, 20.0);
    let smaller = larger * chance.from(0.2, 0.99);
    let found = json!({
        "expansion": expansion_factor(smaller / larger), "contraction": contraction_factor(smaller / larger),
    });
    Ok((json!({ "smaller": smaller, "larger": larger }), found))
}

/// A pump's points from no flow to no pressure.
fn points(chance: &mut Chance) -> Vec<[f64; 2]> {
    let (open, shut_off) = (chance.from(400.0, 1500.0), chance.from(15_000.0, 70_000.0));
    let between = chance.whole(1, 6);
    let mut shares: Vec<[f64; 2]> = (0..between).map(|_| [chance.from(0.02, 0.98), chance.from(0.0, 1.0)]).collect();
    for axis in [0, 1] {
        let mut sorted: Vec<f64> = shares.iter().map(|share| share[axis]).collect();
        sorted.sort_by(f64::total_cmp);
        shares.iter_mut().zip(sorted).for_each(|(share, value)| share[axis] = value);
    }
    let inner = shares.iter().map(|[x, y]| [x * open, (1.0 - y) * shut_off]);
    std::iter::once([0.0, shut_off]).chain(inner).chain([[open, 0.0]]).collect()
}

fn of_pump(chance: &mut Chance) -> Made {
    let points = points(chance);
    let pump = Pump::of_points(&points)?;
    let flow = chance.from(0.0, points[points.len() - 1][0]);
    Ok((json!({ "points": points, "flow": flow }), json!({ "head": pump.head(flow) })))
}

fn of_loop(chance: &mut Chance) -> Made {
    let points = points(chance);
    let pump = Pump::of_points(&points)?;
    let celsius = chance.from(15.0, 60.0);
    let fluid = water(celsius)?;
    let (bore, roughness) = (chance.from(6.0, 13.0), chance.pick(&[0.0, 0.005, 0.05]));
    let (length, bends) = (chance.from(100.0, 3000.0), chance.whole(0, 15));
    let (radius, angle) = (bore * chance.from(1.2, 15.0), chance.from(0.3, 3.1));
    let (fitting, drop, stated) = (bore * chance.from(0.6, 1.4), chance.from(2e3, 4e4), chance.from(60.0, 300.0));
    let mut stretches = vec![Stretch::Bend(Bend { radius, angle }); bends];
    stretches.push(Stretch::Straight { length });
    let course = Course { stretches };
    let at =
        |flow: f64| Conditions { fluid, flow, bore, roughness, bore_before: Some(fitting), bore_after: Some(fitting) };
    let found = operating_point(&pump, |flow| {
        Ok(quadratic_drop(drop, stated, flow)? + run_loss(&course, &at(flow))?.total.nominal)
    })?;
    let given = json!({
        "points": points, "celsius": celsius, "bore": bore, "roughness": roughness, "length": length, "bends": bends,
        "radius": radius, "angle": angle, "fitting": fitting, "drop": drop, "stated": stated,
    });
    let run = run_loss(&course, &at(found.flow))?;
    Ok((given, json!({ "flow": found.flow, "pressure": found.pressure, "run": run.total.nominal })))
}

fn of_readings(chance: &mut Chance) -> Made {
    let (off, scatter) = (chance.from(-0.3, 0.3), chance.scale(1e-3, 0.2));
    let readings: Vec<Reading> = (0..chance.whole(1, 40))
        .map(|_| {
            let nominal = chance.from(5.0, 20.0);
            Reading { nominal, measured: Some(nominal + off + scatter * chance.from(-1.0, 1.0)) }
        })
        .collect();
    let size = sizes(&readings).ok_or("there is a reading")?;
    let ratio = lengths(&readings).ok_or("there is a reading")?.0;
    let given: Vec<Value> = readings.iter().map(|one| json!([one.nominal, one.measured])).collect();
    let found = json!({ "off": size.off, "deviation": size.deviation, "within": size.within, "ratio": ratio });
    Ok((json!({ "readings": given }), found))
}

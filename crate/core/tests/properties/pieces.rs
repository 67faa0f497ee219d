//! Made-up runs, cut anywhere: every piece keeps every promise of a mesh, and what has no room is told and left whole.

use crate::answers::{findings, report, told};
use tubewright_core::engine::Stages;
use tubewright_core::mesh::{signed_volume, solidity};
use tubewright_core::strategies::cut;

#[test]
fn every_piece_is_a_solid_of_its_exact_volume() {
    let (mut cuts, mut joints, mut curved) = (0, 0, 0);
    for design in cut(0x5a1, 270) {
        let told = told(&design);
        let stages = Stages::of(&design.text).unwrap_or_else(|refusal| panic!("{told}: {refusal}\n{}", design.text));
        if !stages.is_made(0) {
            continue;
        }
        let cutting = stages.cutting(0);
        let line = stages.lines[0].line.as_ref().expect("a line");
        cuts += stages.design.runs[0].cuts.len();
        joints += cutting.joints.len();
        curved += cutting
            .joints
            .iter()
            .filter(|joint| line.at(joint.mouth() + 0.5 * joint.size.length).curvature.norm() > 0.0)
            .count();
        let told_rooms =
            findings(&report(&design.text, &told)).iter().filter(|found| found["code"] == "joint_room").count();
        assert_eq!(told_rooms, cutting.left_out.len(), "{told}");
        for pair in cutting.joints.windows(2) {
            assert!(pair[0].span()[1] <= pair[1].span()[0], "{told}");
        }
        let pieces = stages.pieces(0);
        assert_eq!(pieces.len(), cutting.joints.len() + 1);
        for piece in &pieces {
            let which = format!("{told}, piece {} of {}, {}", piece.index + 1, piece.of, design.deviation);
            let mesh =
                stages.piece_mesh(piece, design.deviation).unwrap_or_else(|refusal| panic!("{which}: {refusal}"));
            assert_eq!(solidity(&mesh), [], "{which}");
            let (volume, exact) = (signed_volume(&mesh), piece.profile.material_volume());
            assert!((volume / exact - 1.0).abs() < 5e-4, "{which}: {volume} for {exact}");
        }
        let whole = stages.mesh(0, design.deviation).unwrap_or_else(|refusal| panic!("{told}: {refusal}"));
        assert_eq!(solidity(&whole), [], "{told}");
        let (volume, exact) = (signed_volume(&whole), stages.profile(0, line.length).material_volume());
        assert!((volume / exact - 1.0).abs() < 5e-4, "{told}: {volume} for {exact}");
    }
    println!("{cuts} cuts, {joints} joints, {curved} of them in bends");
    assert!(joints * 4 > cuts && joints > 100 && curved > 20, "{cuts} cuts, {joints} joints, {curved} curved");
}

// A line of constant width on the screen: two ends, each perhaps moved to the flank of a tube, that is, sideways from
// its axis and square to the sight; there the outline of a round tube lies exactly.
uniform mat3 turn;
uniform vec3 focus;
uniform vec4 lens;
uniform float scale;
uniform float bold;
uniform float section;
uniform float grain;
uniform vec4 inks[10];
in vec4 from;
in vec4 to;
in vec3 from_lean;
in vec3 to_lean;
in vec4 shift;
in vec4 style;
in vec2 along;
out vec4 ink;
out vec3 spot;
out float width;
out float away;
out float dash;

const vec4 NOWHERE = vec4(0.0, 0.0, 2.0, 1.0);
const float DASHED = 1.0;
const float SUNK = 2.0;
const float LEVEL = 3.0;

void main() {
    // Four vertices a line: at which end, and on which side.
    int which = gl_VertexID & 3;
    vec2 corner = vec2(which == 1 || which == 2 ? 1.0 : 0.0, which < 2 ? -1.0 : 1.0);
    gl_Position = NOWHERE;
    vec3 a = turn * (from.xyz - focus);
    vec3 b = turn * (to.xyz - focus);
    vec3 lean_a = turn * from_lean;
    vec3 lean_b = turn * to_lean;
    width = style.y < 0.0 ? -style.y * scale : style.y * bold;
    float lift = style.w;
    // On the outside of a body that is cut open: behind the material of the half that is left.
    bool sunk = style.z == SUNK && section > 0.5;
    away = 0.0;
    if (from.w != 0.0 || to.w != 0.0) {
        vec2 side_a = vec2(lean_a.y, -lean_a.x);
        vec2 side_b = vec2(lean_b.y, -lean_b.x);
        // Seen along its axis a tube has no flanks, and where it turns past the sight they swap sides.
        if (min(length(side_a), length(side_b)) < 0.04 || dot(side_a, side_b) < 0.0) {
            return;
        }
        a.xy += from.w * normalize(side_a);
        b.xy += to.w * normalize(side_b);
        // Half the line lies on the body, which bulges toward the eye there; not so on a cut, where that half is gone.
        float bulge = max(abs(from.w), abs(to.w)) * scale;
        if (sunk) {
            lift = -2.0 * bulge;
        } else if (style.z != LEVEL) {
            lift += sqrt(bulge * width);
        }
    } else {
        away = section * mix(lean_a.z, lean_b.z, corner.x);
        lift = sunk ? -lift : lift;
    }
    vec2 p = a.xy * scale + shift.xy;
    vec2 q = b.xy * scale + shift.zw;
    vec2 way = q - p;
    float size = length(way);
    way = size > 1e-4 ? way / size : vec2(1.0, 0.0);
    float half_width = 0.5 * width + grain;
    spot = vec3(mix(-half_width, size + half_width, corner.x), half_width * corner.y, size);
    vec2 at = p + way * spot.x + vec2(-way.y, way.x) * spot.y;
    float depth = (lens.w - mix(a.z, b.z, corner.x) - lift / scale) * lens.z;
    dash = style.z == DASHED ? mix(along.x, along.y, corner.x) * scale + 1.0 : -1.0;
    ink = inks[int(style.x + 0.5)];
    gl_Position = vec4(at / scale * lens.xy, max(depth, -0.999), 1.0);
}

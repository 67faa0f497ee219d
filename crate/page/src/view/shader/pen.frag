// A line's own soft edge: as smooth without the screen's samples as with them.
uniform float grain;
in vec4 ink;
in vec3 spot;
in float width;
in float away;
in float dash;
out vec4 colour;
void main() {
    if (away > 0.04 || (dash > 0.0 && fract(dash / 9.0) > 0.6)) {
        discard;
    }
    float beyond = length(vec2(max(max(-spot.x, spot.x - spot.z), 0.0), spot.y));
    float cover = clamp((0.5 * width - beyond) / grain + 0.5, 0.0, 1.0);
    colour = vec4(ink.rgb, ink.a * cover);
}

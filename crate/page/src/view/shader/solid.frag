// Matt faces under three lights that stay with the eye. In a section, what looks toward the eye from its axis is left
// out, and a back face then is where the sight enters the material: the cut.
uniform vec3 sky;
uniform vec4 tone;
uniform vec3 shade;
uniform vec3 cut;
uniform vec3 hatch;
uniform vec3 wet;
uniform vec3 anchor;
uniform float section;
uniform float gloss;
in vec3 facing;
in vec3 away;
out vec4 colour;

// Below this the axis runs along the sight: no half is nearer to the eye, and nothing is taken away.
const float LEVEL = 0.04;

vec3 shown(vec3 light) {
    return pow(clamp(light, 0.0, 1.0), vec3(1.0 / 2.2));
}

void main() {
    if (section > 0.5 && away.z > LEVEL) {
        discard;
    }
    if (!gl_FrontFacing) {
        // Hatching at 45 degrees, fixed to the scene, as drawings show cut material.
        float across = (gl_FragCoord.x - anchor.x + gl_FragCoord.y - anchor.y) / anchor.z;
        float line = abs(fract(across / 7.0) - 0.5) * 7.0;
        colour = vec4(shown(mix(hatch, cut, smoothstep(0.35, 1.05, line))), 1.0);
        return;
    }
    vec3 normal = normalize(facing);
    float inside = section * (1.0 - smoothstep(-0.9, -0.8, dot(normal, away)));
    vec3 base = mix(tone.rgb, wet, inside);
    // A broad light reaches a little round the body's side.
    float key = max((dot(normal, normalize(vec3(-0.42, 0.62, 0.66))) + 0.12) / 1.12, 0.0);
    float fill = max(dot(normal, normalize(vec3(0.85, -0.1, 0.5))), 0.0);
    float up = 0.5 + 0.5 * dot(normal, sky);
    vec3 ambient = mix(shade, vec3(1.0), up) * 0.42;
    vec3 light = base * (ambient + 0.66 * key + 0.16 * fill);
    vec3 middle = normalize(vec3(-0.42, 0.62, 1.66));
    light += gloss * pow(max(dot(normal, middle), 0.0), 28.0);
    // From behind and above: it parts a body from a darker one behind it.
    float rim = pow(1.0 - max(normal.z, 0.0), 3.0) * (0.45 + 0.55 * max(dot(normal, normalize(vec3(0.3, 0.9, -0.3))), 0.0));
    light += mix(base, vec3(1.0), 0.3) * 0.42 * rim;
    colour = vec4(shown(light), tone.a);
}

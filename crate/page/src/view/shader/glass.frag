// A wall that is seen through, nearest skin only. How much of it shows is how far the sight goes through it: of a round
// tube that is known from the skin alone. It is most beside the bore, so the bore reads without a line; and toward the
// flank the skin mirrors what is far aside.
uniform vec3 sky;
uniform vec3 tone;
uniform vec3 verge;
uniform float bore;
uniform float density;
uniform float haze;
uniform float filled;
in vec3 facing;
in vec3 away;
in vec3 along;
out vec4 colour;

vec3 shown(vec3 light) {
    return pow(clamp(light, 0.0, 1.0), vec3(1.0 / 2.2));
}

void main() {
    vec3 normal = normalize(facing);
    float outward = dot(normal, away);
    if (outward < -0.3) {
        discard;
    }
    float radius = max(length(along), 1e-4);
    // Square to the tube the sight is this long; along it, a wall is never seen thicker than four times.
    float slant = sqrt(max(1.0 - along.z * along.z / (radius * radius), 0.0625));
    float upright = clamp(normal.z / slant, 0.0, 1.0);
    float off = 1.0 - upright * upright;
    float inner = clamp(bore / radius, 0.0, 0.98);
    float wall = upright - sqrt(max(inner * inner - off, 0.0));
    float way = outward < 0.3 ? 1.0 : wall * (2.0 - filled) / slant;
    float body = max(1.0 - exp(-density * way), haze);

    float key = max((dot(normal, normalize(vec3(-0.42, 0.62, 0.66))) + 0.2) / 1.2, 0.0);
    float up = 0.5 + 0.5 * dot(normal, sky);
    vec3 light = tone * (0.42 + 0.2 * up + 0.5 * key);

    float edge = 0.62 * pow(1.0 - max(normal.z, 0.0), 2.6);
    float glint = 0.75 * pow(max(dot(normal, normalize(vec3(-0.42, 0.62, 1.66))), 0.0), 70.0);
    // Light through the wall, the mirrored verge over it, the glint over both.
    vec3 mixture = light * body * (1.0 - edge) + verge * edge;
    float cover = 1.0 - (1.0 - body) * (1.0 - edge);
    mixture = mixture * (1.0 - glint) + vec3(glint);
    cover = 1.0 - (1.0 - cover) * (1.0 - glint);
    colour = vec4(shown(mixture / max(cover, 1e-4)), cover);
}

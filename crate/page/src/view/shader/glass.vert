// Faces of walls that are seen through: placed as solid ones are, to the bit, and with what their thickness hangs on.
uniform mat3 turn;
uniform vec3 focus;
uniform vec4 lens;
in vec3 position;
in vec3 normal;
in vec3 radial;
in vec3 girth;
out vec3 facing;
out vec3 away;
out vec3 along;
void main() {
    vec3 seen = turn * (position - focus);
    facing = turn * normal;
    away = turn * radial;
    along = turn * girth;
    gl_Position = vec4(seen.xy * lens.xy, (lens.w - seen.z) * lens.z, 1.0);
}

// Faces: from the scene's millimetres to the picture's. The focus is taken off first, so that a scene far from its
// datum keeps all the digits it has.
uniform mat3 turn;
uniform vec3 focus;
uniform vec4 lens;
in vec3 position;
in vec3 normal;
in vec3 radial;
out vec3 facing;
out vec3 away;
void main() {
    vec3 seen = turn * (position - focus);
    facing = turn * normal;
    away = turn * radial;
    gl_Position = vec4(seen.xy * lens.xy, (lens.w - seen.z) * lens.z, 1.0);
}

// What the built engine.js exports: the engine's calls, and the view that draws on a canvas.

export default function init(options: { module_or_path: WebAssembly.Module | BufferSource | string | URL }): Promise<unknown>;

export function normalise(text: string): string;
export function designIn(bytes: Uint8Array): string;
export function problems(text: string): string;
export function report(text: string): string;
export function scene(text: string): string;
export function tubeMesh(text: string, run: string, deviation: number): { positions: Float32Array; indices: Uint32Array };
export function exportFile(text: string, request: string, watch?: (share: number) => void): Uint8Array;
export function inspect(text: string, request: string): string;
export function fileName(text: string, request: string): string;
export function apply(text: string, patch: string): string;
export function edit(text: string, request: string): string;
export function difference(before: string, after: string): string;
export function variants(text: string, request: string): string;
export function codeOf(text: string): string;
export function stances(text: string, run: string, piece?: number): string;
export function cuts(text: string, run: string): string;
export function plates(text: string): string;
export function vocabulary(): string;
export function presets(): string;

export class View {
  constructor(canvas: HTMLCanvasElement);
  setScene(scene: string): void;
  setTube(run: string, positions: Float32Array, indices: Uint32Array): void;
  dropTube(run: string): void;
  clear(): void;
  resize(width: number, height: number, ratio: number): void;
  orbit(dx: number, dy: number): void;
  pan(dx: number, dy: number): void;
  zoom(factor: number, x: number, y: number): void;
  fit(): void;
  look(side: string): void;
  setSection(on: boolean): void;
  setCoolant(shown: boolean | undefined): void;
  showsCoolant(): boolean;
  setTheme(theme: string): void;
  setSelected(run: string | undefined): void;
  draw(): void;
  needsDraw(): boolean;
  drawLarge(times: number, take: Function): void;
  lost(): void;
  restored(): void;
  description(): string;
  renderer(): string;
  gridStep(): number;
  scale(): number;
  locate(x: number, y: number, z: number): Float64Array;
  handles(): string;
  hold(x: number, y: number, z: number, dragged: boolean): void;
  letGo(): void;
  pick(x: number, y: number): string;
  straightAfter(station: number | undefined): string;
  onPlane(x: number, y: number, origin: Float64Array, normal: Float64Array): Float64Array;
  onLine(x: number, y: number, origin: Float64Array, direction: Float64Array): Float64Array;
  axes(): Float64Array;
  free(): void;
}

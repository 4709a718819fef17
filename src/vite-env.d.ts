/** Keys from the build environment; each place that uses one has its own default. */
interface ImportMetaEnv {
  readonly VITE_GRID_LICENCE?: string;
  readonly VITE_ENGINE_LICENCE?: string;
}

/** No other name may be read from `import.meta.env`. */
interface ViteTypeOptions {
  strictImportMetaEnv: unknown;
}

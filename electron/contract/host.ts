/**
 * The one interface through which the page reaches the machine it runs on. Two hosts serve it: Electron's
 * preload, and the loopback server. Free of core: files are text here, their meaning is the page's business.
 */

/** A file the host knows, held by the page as an opaque token; the page never sees or builds paths. */
export interface FileEntry {
  readonly token: string;
  /** Base name for people, e.g. `demo-course.geojson`. */
  readonly name: string;
  readonly kind: FileKind;
  /** True for the demo files shipped with the program. */
  readonly readOnly: boolean;
  /** Milliseconds since 1970, of the last change on disk. */
  readonly modifiedAt: number;
  readonly bytes: number;
}

export type FileKind = 'course' | 'player' | 'round';

export interface OpenedFile {
  readonly entry: FileEntry;
  readonly text: string;
  /** SHA-256 of the file's bytes, hex: hand it back on save so that another writer's change is noticed. */
  readonly revision: string;
}

export type HostFailure =
  | 'not-found'
  | 'not-allowed'
  | 'too-large'
  | 'not-text'
  | 'changed-on-disk'
  | 'disk-full'
  | 'read-only'
  | 'bad-request'
  | 'host-gone'
  | 'cancelled'
  | 'unknown';

export type HostAnswer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly failure: HostFailure; readonly message: string };

export interface SaveRequest {
  readonly token: string;
  readonly text: string;
  /** Revision the page started from; a different one on disk is refused as `changed-on-disk`. */
  readonly baseRevision: string | null;
}

export interface Settings {
  readonly units: 'yards' | 'metres';
  readonly theme: 'light' | 'dark' | 'system';
  /** Tokens of what was open last. */
  readonly lastCourse: string | null;
  readonly lastPlayer: string | null;
}

export interface HostInfo {
  readonly shell: 'electron' | 'loopback';
  readonly version: string;
  readonly workspaceName: string;
}

/** A copy that the host kept of a file's earlier good version, before it was saved over. */
export interface KeptCopy {
  /** Milliseconds since 1970; names the copy together with the file's token. */
  readonly keptAt: number;
  readonly bytes: number;
}

export type FileChange = { readonly token: string; readonly change: 'changed' | 'removed' | 'added' };

/** Every call resolves; a refusal is an answer, not an exception. */
export interface Host {
  info(): Promise<HostAnswer<HostInfo>>;
  list(): Promise<HostAnswer<readonly FileEntry[]>>;
  open(token: string): Promise<HostAnswer<OpenedFile>>;
  save(request: SaveRequest): Promise<HostAnswer<{ readonly revision: string }>>;
  /** Earlier good versions of a file of the workspace, newest first; empty where there are none. */
  copies(token: string): Promise<HostAnswer<readonly KeptCopy[]>>;
  /** Text of a kept copy. Changes nothing on disk: saving it puts it back. */
  openCopy(token: string, keptAt: number): Promise<HostAnswer<{ readonly text: string }>>;
  /** Makes a new file in the workspace; the host picks a free name near `suggestedName`. */
  create(kind: FileKind, suggestedName: string, text: string): Promise<HostAnswer<OpenedFile>>;
  /** Lets the person pick a file from anywhere and copies it into the workspace. `cancelled` where they did not. */
  importFile(kind: FileKind): Promise<HostAnswer<OpenedFile>>;
  /** Called for each change on disk of a listed file until the returned function is called. */
  watch(listener: (change: FileChange) => void): () => void;
  /** Prints the page as it stands to PDF where the host can; elsewhere opens the browser's own print dialog. */
  exportPdf(suggestedName: string): Promise<HostAnswer<{ readonly where: string }>>;
  print(): Promise<HostAnswer<null>>;
  readSettings(): Promise<HostAnswer<Settings>>;
  writeSettings(settings: Settings): Promise<HostAnswer<null>>;
}

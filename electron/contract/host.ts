/**
 * The one interface through which the page reaches the machine it runs on. Two hosts serve it: Electron's
 * preload, and the loopback server. Free of core: files are text here, their meaning is the page's business.
 */

/** Where a file went. */
export interface Written {
  /** For people; in English where it is more than a path. */
  readonly where: string;
  readonly told?: ToldMessage;
}

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
  /** The workspace folder itself is away: drive removed, folder renamed. Trying again later may work. */
  | 'folder-gone'
  /** This window does not hold the file, or no longer does; claim it first. */
  | 'not-claimed'
  /** The file is not of a kind that serves here, or is damaged. */
  | 'unfit'
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

/** A message as an entry of the catalogue of words with its values: the window tells it in its own language. */
export interface ToldMessage {
  readonly entry: readonly string[];
  readonly values: Readonly<Record<string, string | number | ToldMessage>>;
}

export type HostAnswer<T> =
  | { readonly ok: true; readonly value: T }
  | {
      readonly ok: false;
      readonly failure: HostFailure;
      /** In English, for logs and commands, and where the window does not know the entry. */
      readonly message: string;
      readonly told?: ToldMessage;
      /** With `changed-on-disk`: the revision that is there now. */
      readonly revisionOnDisk?: string;
    };

export interface SaveRequest {
  readonly token: string;
  readonly text: string;
  /** Revision the page started from; a different one on disk is refused as `changed-on-disk`. */
  readonly baseRevision: string | null;
  /** Number of the last journal entry that `text` includes; absent where it includes none. */
  readonly journalUpTo?: number;
}

/** Who has a file that this window may therefore only read. */
export interface ClaimHolder {
  readonly place: 'other-window' | 'other-program' | 'other-computer';
  /** Null where the holder's note could not be read. */
  readonly shell: 'electron' | 'loopback' | null;
  /** The computer's name, empty where not known. */
  readonly computer: string;
  /** Milliseconds since 1970. */
  readonly since: number;
}

export type Claim =
  | { readonly isHeld: true }
  /** The file may be read, not saved, until the holder lets go: then a new claim succeeds. */
  | { readonly isHeld: false; readonly holder: ClaimHolder };

/** A file that is gone from the workspace and has left a journal. Its token is the one that it had, and can be claimed. */
export interface LeftBehind {
  readonly token: string;
  readonly name: string;
}

/** What the page writes down between saves: a change or a whole snapshot, as it likes. */
export interface JournalRequest {
  readonly token: string;
  /** Revision of the saved file that the entry builds on. */
  readonly baseRevision: string;
  readonly text: string;
}

export interface JournalEntry {
  /** Counts up from 1 within a journal. */
  readonly number: number;
  /** Milliseconds since 1970. */
  readonly writtenAt: number;
  readonly baseRevision: string;
  readonly text: string;
}

/** What one sitting (from claim to release or crash) wrote down and had not saved. */
export interface Journal {
  /** Names the journal when it is cleared. */
  readonly journal: string;
  /** True for the one that this window is writing now. */
  readonly isOwn: boolean;
  /** Milliseconds since 1970; 0 where not known. */
  readonly startedAt: number;
  /** Entries that the file on disk does not include, oldest first. */
  readonly entries: readonly JournalEntry[];
  /** Bytes that were cut off or damaged and had to be left out; such an entry was never acknowledged. */
  readonly lostBytes: number;
  /** Written by a newer version of the program, so not read; it stays as it is. */
  readonly isNewer: boolean;
}

export interface ClearRequest {
  readonly token: string;
  readonly journal: string;
  /** Entries up to this number are dropped. */
  readonly upTo: number;
}

export type AttachmentKind = 'picture' | 'geotiff' | 'pmtiles' | 'mbtiles';

/** A picture or map file that lies beside a course and belongs to it. */
export interface Attachment {
  readonly token: string;
  /** Base name for people and for the course's own notes: unique among the course's attachments. */
  readonly name: string;
  readonly kind: AttachmentKind;
  /** As in `Content-Type`, e.g. `image/png`. */
  readonly mediaType: string;
  readonly bytes: number;
  /** Milliseconds since 1970. */
  readonly modifiedAt: number;
}

/** Following and stopping a copy under way. */
export interface Following {
  readonly progress?: (doneBytes: number, totalBytes: number) => void;
  readonly signal?: AbortSignal;
}

/** What an MBTiles file says of itself (MBTiles 1.3); null where it says nothing sensible. */
export interface TileSetInfo {
  readonly name: string | null;
  readonly mediaType: string;
  readonly attribution: string | null;
  readonly leastZoom: number | null;
  readonly mostZoom: number | null;
  /** West, south, east, north in degrees. */
  readonly bounds: readonly [number, number, number, number] | null;
}

export interface Tile {
  readonly mediaType: string;
  readonly bytes: ArrayBuffer;
}

/** A tile address of the person's own. Nothing is asked of it before they have accepted its terms. */
export interface TileSource {
  readonly name: string;
  /** `https://…/{z}/{x}/{y}.png`: https, a host name, the three places once each. */
  readonly address: string;
  readonly attribution: string;
  /** The day on which the person accepted the address's terms, `2026-01-31`; null where they have not. */
  readonly termsAcceptedOn: string | null;
  readonly mostZoom?: number;
}

/** What a person wished for a round with one course and one player. What the text means is the page's business. */
export interface KeptRound {
  /** Tokens of the two files. */
  readonly course: string;
  readonly player: string;
  readonly wishes: string;
}

/** The day that a course is planned for. What the text means is the page's business. */
export interface KeptDay {
  /** Token of the course. */
  readonly course: string;
  readonly conditions: string;
}

export interface Settings {
  readonly units: 'yards' | 'metres';
  readonly theme: 'light' | 'dark' | 'system';
  /** Of the words; absent as `system`. */
  readonly language?: 'en' | 'de' | 'system';
  /** No units were ever chosen: the page takes those of the person's region. Only when read. */
  readonly isNew?: true;
  /** The first walk round the window was left or finished; once kept it stays. */
  readonly tourSeen?: true;
  /** Tokens of what was open last. */
  readonly lastCourse: string | null;
  readonly lastPlayer: string | null;
  /** Always there when read. Those whose terms are accepted may be asked by the page after it has been loaded anew. */
  readonly tileSources?: readonly TileSource[];
  /** Last changed first. */
  readonly rounds?: readonly KeptRound[];
  /** Last changed first. */
  readonly days?: readonly KeptDay[];
}

/** Settings of which some are changed: what is absent stays as it is on disk. */
export type SettingsChange = Partial<Settings>;

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
  /**
   * Takes the file for this window alone, until it is released, the window is gone or the host has crashed
   * (then the claim lapses within seconds). Asking again for what this window holds is fine.
   */
  claim(token: string): Promise<HostAnswer<Claim>>;
  /** Lets go of the file. What the journal has and the file has not stays for the next one who claims it. */
  release(token: string): Promise<HostAnswer<null>>;
  /** Needs the claim. */
  save(request: SaveRequest): Promise<HostAnswer<{ readonly revision: string }>>;
  /** Writes an entry down so that a crash or power cut does not lose it; answered when it is on the disk. */
  journal(
    request: JournalRequest,
  ): Promise<HostAnswer<{ readonly journal: string; readonly number: number }>>;
  /** Journals of the file with entries that were not saved, oldest first. Needs the claim. */
  readJournal(token: string): Promise<HostAnswer<readonly Journal[]>>;
  /** Drops entries: after a good save, or because the person has decided. Needs the claim. */
  clearJournal(request: ClearRequest): Promise<HostAnswer<null>>;
  /**
   * Files whose journals have outlived them, but for those that a window of this program has: claim one to read its journals
   * and to clear them.
   */
  leftBehind(): Promise<HostAnswer<readonly LeftBehind[]>>;
  /** Earlier good versions of a file of the workspace, newest first; empty where there are none. */
  copies(token: string): Promise<HostAnswer<readonly KeptCopy[]>>;
  /** Text of a kept copy. Changes nothing on disk: saving it puts it back. */
  openCopy(token: string, keptAt: number): Promise<HostAnswer<{ readonly text: string }>>;
  /** Makes a new file in the workspace; the host picks a free name near `suggestedName`. */
  create(kind: FileKind, suggestedName: string, text: string): Promise<HostAnswer<OpenedFile>>;
  /** Lets the person pick a file from anywhere and copies it into the workspace. `cancelled` where they did not. */
  importFile(kind: FileKind): Promise<HostAnswer<OpenedFile>>;
  /** Lets the person pick a picture, GeoTIFF, PMTiles or MBTiles file and copies it beside the course. */
  attach(token: string, following?: Following): Promise<HostAnswer<Attachment>>;
  /** Pictures and map files beside a course, by name. */
  listAttachments(token: string): Promise<HostAnswer<readonly Attachment[]>>;
  /** At most 16 MiB from `offset`; shorter where the file ends. */
  readAttachment(attachment: string, offset: number, length: number): Promise<HostAnswer<ArrayBuffer>>;
  /** For an MBTiles attachment. */
  tileSetInfo(attachment: string): Promise<HostAnswer<TileSetInfo>>;
  /** One tile of an MBTiles attachment, counted from the north-west corner; null where there is none. */
  readTile(attachment: string, zoom: number, x: number, y: number): Promise<HostAnswer<Tile | null>>;
  /** Called for each change on disk of a listed file until the returned function is called. */
  watch(listener: (change: FileChange) => void): () => void;
  /** Prints the page as it stands to PDF where the host can; elsewhere opens the browser's own print dialog. */
  exportPdf(suggestedName: string): Promise<HostAnswer<Written>>;
  print(): Promise<HostAnswer<null>>;
  /**
   * Writes a file that the person takes out: where they say, or into the workspace's own folder for it. The name
   * ends in `.geojson`, `.json`, `.csv`, `.svg` or `.png`; at most 64 MiB. `where` is for the person to read.
   */
  saveExport(suggestedName: string, bytes: ArrayBuffer): Promise<HostAnswer<Written>>;
  readSettings(): Promise<HostAnswer<Settings>>;
  /**
   * Keeps a change. `was` has what the changed parts were for this window, of lists the changed entries alone: another window
   * may have written meanwhile, and what it wrote stays. Without `was` lists are meant whole.
   */
  writeSettings(change: SettingsChange, was?: SettingsChange): Promise<HostAnswer<null>>;
  /**
   * Keeps a text for later in the program's own cache. `key` is a SHA-256 in hex over all that the text depends on. `isKept`
   * is false where the disk did not take it, which nobody needs to be told. At most 256 KiB.
   */
  keepPlan(key: string, text: string): Promise<HostAnswer<{ readonly isKept: boolean }>>;
  /** A kept text, whole as it was given; null where there is none (any more). */
  keptPlan(key: string): Promise<HostAnswer<{ readonly text: string | null }>>;
}

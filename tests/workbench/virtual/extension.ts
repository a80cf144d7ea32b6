/** An extension for the tests: the folder `memfs:/shop`, which is on no disk. Its files are what `files.json` beside it says. */
import {
  Disposable,
  EventEmitter,
  type ExtensionContext,
  type FileChangeEvent,
  FileChangeType,
  FileSystemError,
  type FileSystemProvider,
  FileType,
  Uri,
  workspace,
} from 'vscode';

const scheme = 'memfs';

export async function activate(context: ExtensionContext): Promise<void> {
  const address = Uri.joinPath(context.extensionUri, 'files.json');
  const files = JSON.parse(new TextDecoder().decode(await workspace.fs.readFile(address))) as Record<string, string>;
  context.subscriptions.push(workspace.registerFileSystemProvider(scheme, new Memory(files)));
}

class Memory implements FileSystemProvider {
  readonly #files: Map<string, Uint8Array>;
  readonly #changed = new EventEmitter<FileChangeEvent[]>();
  readonly onDidChangeFile = this.#changed.event;

  constructor(files: Readonly<Record<string, string>>) {
    this.#files = new Map(Object.entries(files).map(([path, text]) => [path, new TextEncoder().encode(text)]));
  }

  watch(): Disposable {
    return new Disposable(() => {});
  }

  stat({ path }: Uri) {
    const file = this.#files.get(path);
    const times = { ctime: 0, mtime: 0 };
    if (file !== undefined) return { type: FileType.File, size: file.length, ...times };
    if (this.#below(path).length > 0) return { type: FileType.Directory, size: 0, ...times };
    throw FileSystemError.FileNotFound(path);
  }

  readDirectory({ path }: Uri): [string, FileType][] {
    const entries = new Map<string, FileType>();
    for (const file of this.#below(path)) {
      const [name, ...more] = file.slice(path.replace(/\/?$/u, '/').length).split('/');
      entries.set(name!, more.length > 0 ? FileType.Directory : FileType.File);
    }
    return [...entries];
  }

  readFile({ path }: Uri): Uint8Array {
    const file = this.#files.get(path);
    if (file === undefined) throw FileSystemError.FileNotFound(path);
    return file;
  }

  writeFile(uri: Uri, content: Uint8Array): void {
    const type = this.#files.has(uri.path) ? FileChangeType.Changed : FileChangeType.Created;
    this.#files.set(uri.path, content);
    this.#changed.fire([{ type, uri }]);
  }

  createDirectory(): void {}

  delete(uri: Uri): void {
    this.#files.delete(uri.path);
    this.#changed.fire([{ type: FileChangeType.Deleted, uri }]);
  }

  rename(): void {
    throw FileSystemError.NoPermissions();
  }

  #below(path: string): string[] {
    const folder = path.replace(/\/?$/u, '/');
    return [...this.#files.keys()].filter((file) => file.startsWith(folder));
  }
}

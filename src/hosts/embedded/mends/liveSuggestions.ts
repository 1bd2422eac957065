import type { DocumentDataModel, Injector } from "@univerjs/core";
import { ICommandService, IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import type { IShortcutItem } from "@univerjs/preset-sheets-core";
import {
  DocSelectionManagerService,
  IDescriptionService,
  IShortcutService,
  KeyCode,
  RichTextEditingMutation,
} from "@univerjs/preset-sheets-core";

// The command and the keys of a list; the editor's own id follows.
const LIST = "sheet.formula-embedding-editor.search_function.";

// A name that ends here and is not a part of a reference or a sheet's name.
const NAME = /(?:^|[^\p{L}\p{N}_.$!'])[\p{L}_][\p{L}\p{N}_.]*$/u;

/**
 * Lets Enter and Tab take a suggestion only while the very text it was made for stands before the caret, and closes the list when no name
 * is being typed there any more.
 *
 * In 0.25.1 the list follows 300 ms after the last key, and till then the old one takes the key: a pause inside HIPLEN and the rest in
 * haste gave HIPRUN, with a figure that looks right.
 */
export function liveSuggestions(injector: Injector): void {
  const commands = injector.get(ICommandService);
  const shortcuts = injector.get(IShortcutService);
  const descriptions = injector.get(IDescriptionService);
  const open = new Set<string>();
  let madeFor: string | null = null;

  const find = descriptions.getSearchListByNameFirstLetter.bind(descriptions);
  descriptions.getSearchListByNameFirstLetter = (name) => {
    madeFor = beforeCaret(injector);
    return find(name);
  };

  const register = shortcuts.registerShortcut.bind(shortcuts);
  shortcuts.registerShortcut = (item: IShortcutItem) => {
    if (!item.id.startsWith(LIST)) return register(item);
    open.add(item.id);
    const takes = item.binding === KeyCode.ENTER || item.binding === KeyCode.TAB;
    const registered = register(takes ? { ...item, preconditions: () => beforeCaret(injector) === madeFor } : item);
    return { dispose: () => (open.delete(item.id), registered.dispose()) };
  };

  const closeUnlessNamed = (editor: string) => {
    if (open.has(LIST + editor) && !NAME.test(beforeCaret(injector) ?? ""))
      commands.syncExecuteCommand(LIST + editor, { keyCode: KeyCode.ESC });
  };
  commands.onCommandExecuted(({ id, params }) => {
    // The caret follows the text a moment later.
    if (id === RichTextEditingMutation.id && open.size)
      setTimeout(() => closeUnlessNamed((params as { unitId: string }).unitId));
  });
}

/** The formula in the editor up to the caret; null where none is typed, or the caret stands inside a text of it. */
function beforeCaret(injector: Injector): string | null {
  const editor = injector
    .get(IUniverInstanceService)
    .getCurrentUnitOfType<DocumentDataModel>(UniverInstanceType.UNIVER_DOC);
  const caret = injector.get(DocSelectionManagerService).getActiveTextRange();
  if (!caret?.collapsed) return null;
  const text = editor?.getBody()?.dataStream.slice(0, caret.startOffset ?? 0) ?? "";
  return text.startsWith("=") && text.split('"').length % 2 === 1 ? text : null;
}

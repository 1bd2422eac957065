/** The sheets in order, hidden ones too: their names are taken. */
export async function sheets(
  context: Excel.RequestContext,
): Promise<{ readonly id: string; readonly name: string; readonly visible: boolean }[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/id,items/name,items/visibility");
  await context.sync();
  return worksheets.items.map(({ id, name, visibility }) => ({ id, name, visible: visibility === "Visible" }));
}

/** The names of the sheets, in order. */
export async function sheetNames(context: Excel.RequestContext): Promise<string[]> {
  return (await sheets(context)).map(({ name }) => name);
}

/** The sheet of that name. @throws in words when there is none. */
export async function sheetNamed(context: Excel.RequestContext, name: string): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (sheet.isNullObject) throw new Error(`There is no sheet named ${name}.`);
  return sheet;
}

/** Refuses in words when one of the sheets, given by name or id, is protected: it could be neither written nor put back. */
export async function refuseProtected(context: Excel.RequestContext, keys: Iterable<string>): Promise<void> {
  const asked = [...new Set(keys)].map((key) =>
    context.workbook.worksheets.getItem(key).load("name,protection/protected"),
  );
  await context.sync();
  const locked = asked.find(({ protection }) => protection.protected);
  if (locked)
    throw new Error(`The sheet ${locked.name} is protected. Unprotect it (Review, Unprotect Sheet) and try again.`);
}

/** The names of the sheets, in order, hidden ones too: their names are taken. */
export async function sheetNames(context: Excel.RequestContext): Promise<string[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  return worksheets.items.map(({ name }) => name);
}

/** The sheet of that name. @throws in words when there is none. */
export async function sheetNamed(context: Excel.RequestContext, name: string): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (sheet.isNullObject) throw new Error(`There is no sheet named ${name}.`);
  return sheet;
}

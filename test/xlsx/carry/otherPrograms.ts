import Excel from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { parseCsv } from "hucre/csv";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** Whether LibreOffice is on this machine. */
export const office = spawnSync("soffice", ["--version"], { stdio: "ignore" }).status === 0;

/** Ten by ten pixels. */
const PICTURE = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAoAAAAKCAYAAACNMs+9AAAAFUlEQVR42mNk+M9Qz0AEYBxVSF+FABJADveWkH6oAAAAAElFTkSuQmCC",
  "base64",
);

/** An estimate as exceljs writes it, with one of everything that it can. */
export async function byExceljs(): Promise<Uint8Array> {
  const book = new Excel.Workbook();
  const sheet = book.addWorksheet("Estimate", {
    properties: { tabColor: { argb: "FF2F6F4F" } },
    pageSetup: { orientation: "landscape", printArea: "A1:F20", printTitlesRow: "1:1" },
    headerFooter: { oddFooter: "&RPage &P" },
  });
  sheet.columns = [{ width: 22 }, { width: 9 }, { width: 12 }, { width: 14 }];
  sheet.addRows([
    ["Item", "Pieces", "Each", "Cost"],
    ["Boards", 40, 18.5],
    ["Nails", 6, 7.25],
    ["Hangers", 24, 2.1],
  ]);
  for (const row of [2, 3, 4]) sheet.getCell(`D${row}`).value = { formula: `B${row}*C${row}`, result: 0 };
  sheet.getCell("D2").value = { formula: "B2*C2", result: 740 };
  sheet.getCell("D3").value = { formula: "B3*C3", result: 43.5 };
  sheet.getCell("D4").value = { formula: "B4*C4", result: 50.4 };
  sheet.getCell("D5").value = { formula: "SUM(D2:D4)", result: 833.9 };
  sheet.getCell("D5").font = { bold: true, color: { theme: 4 } };
  sheet.getCell("D5").numFmt = '"$"#,##0.00';
  sheet.getCell("A6").note = "Measured on site";
  sheet.getCell("A7").value = { text: "drawings", hyperlink: "https://example.org/plans" };
  sheet.getCell("A8").value = { richText: [{ text: "wet", font: { bold: true } }, { text: " lumber only" }] };
  sheet.getCell("A9").alignment = { textRotation: 45, indent: 1 };
  sheet.getCell("A9").value = "turned";
  sheet.getCell("B9").protection = { locked: false };
  sheet.getCell("B2").dataValidation = {
    type: "whole",
    operator: "between",
    formulae: [1, 500],
    showErrorMessage: true,
  };
  sheet.getCell("A10").dataValidation = { type: "list", formulae: ['"pine,fir"'] };
  sheet.addConditionalFormatting({
    ref: "D2:D4",
    rules: [
      {
        type: "cellIs",
        operator: "greaterThan",
        formulae: [100],
        priority: 1,
        style: { font: { bold: true }, fill: { type: "pattern", pattern: "solid", bgColor: { argb: "FFFFC000" } } },
      },
      { type: "dataBar", priority: 2, cfvo: [{ type: "min" }, { type: "max" }] } as never,
    ],
  });
  sheet.addImage(book.addImage({ buffer: PICTURE as never, extension: "png" }), "F2:G5");
  sheet.addTable({
    name: "Crew",
    ref: "A14",
    columns: [{ name: "Who" }, { name: "Hours" }],
    rows: [
      ["A", 8],
      ["B", 6],
    ],
  });
  sheet.autoFilter = "A1:D4";
  sheet.mergeCells("A12:B12");
  book.addWorksheet("Notes").getCell("A1").value = { formula: "Estimate!D5", result: 833.9 };
  book.definedNames.add("Estimate!$B$2:$B$4", "Pieces");
  return new Uint8Array(await book.xlsx.writeBuffer());
}

const NS = "http://schemas.openxmlformats.org";
const CHART = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<c:chartSpace xmlns:c="${NS}/drawingml/2006/chart" xmlns:a="${NS}/drawingml/2006/main"><c:chart><c:plotArea><c:layout/><c:barChart><c:barDir val="col"/><c:grouping val="clustered"/><c:varyColors val="0"/><c:ser><c:idx val="0"/><c:order val="0"/><c:cat><c:strRef><c:f>Estimate!$A$2:$A$4</c:f></c:strRef></c:cat><c:val><c:numRef><c:f>Estimate!$D$2:$D$4</c:f></c:numRef></c:val></c:ser><c:axId val="11"/><c:axId val="12"/></c:barChart><c:catAx><c:axId val="11"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="b"/><c:crossAx val="12"/></c:catAx><c:valAx><c:axId val="12"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="l"/><c:crossAx val="11"/></c:valAx></c:plotArea></c:chart></c:chartSpace>`;
const FRAME = `<xdr:twoCellAnchor><xdr:from><xdr:col>5</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>7</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>10</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>18</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to><xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="9" name="Chart"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off xmlns:a="${NS}/drawingml/2006/main" x="0" y="0"/><a:ext xmlns:a="${NS}/drawingml/2006/main" cx="0" cy="0"/></xdr:xfrm><a:graphic xmlns:a="${NS}/drawingml/2006/main"><a:graphicData uri="${NS}/drawingml/2006/chart"><c:chart xmlns:c="${NS}/drawingml/2006/chart" xmlns:r="${NS}/officeDocument/2006/relationships" r:id="rId77"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`;

/** The file with a chart beside its first picture, printer settings, XML of some other program, and a part that nobody knows. */
export function withMore(bytes: Uint8Array, chart = CHART): Uint8Array {
  const parts = unzipSync(bytes);
  const edit = (path: string, change: (text: string) => string) =>
    (parts[path] = strToU8(change(parts[path] ? strFromU8(parts[path]) : "")));
  const relation = (path: string, id: string, type: string, target: string) =>
    edit(path, (text) =>
      (text || `<Relationships xmlns="${NS}/package/2006/relationships"></Relationships>`).replace(
        "</Relationships>",
        `<Relationship Id="${id}" Type="${type}" Target="${target}"/></Relationships>`,
      ),
    );
  edit("xl/drawings/drawing1.xml", (text) => text.replace("</xdr:wsDr>", `${FRAME}</xdr:wsDr>`));
  relation(
    "xl/drawings/_rels/drawing1.xml.rels",
    "rId77",
    `${NS}/officeDocument/2006/relationships/chart`,
    "../charts/chart1.xml",
  );
  parts["xl/charts/chart1.xml"] = strToU8(chart);
  parts["xl/printerSettings/printerSettings1.bin"] = new Uint8Array([7, 0, 255, 1]);
  relation(
    "xl/worksheets/_rels/sheet1.xml.rels",
    "rId78",
    `${NS}/officeDocument/2006/relationships/printerSettings`,
    "../printerSettings/printerSettings1.bin",
  );
  edit("xl/worksheets/sheet1.xml", (text) =>
    text.replace(/<pageSetup /, `<pageSetup xmlns:r="${NS}/officeDocument/2006/relationships" r:id="rId78" `),
  );
  parts["customXml/item1.xml"] = strToU8("<job xmlns='urn:example:job'>17</job>");
  relation(
    "xl/_rels/workbook.xml.rels",
    "rId79",
    `${NS}/officeDocument/2006/relationships/customXml`,
    "../customXml/item1.xml",
  );
  parts["xl/future/thing1.xml"] = strToU8("<thing xmlns='urn:example:future'/>");
  relation("xl/_rels/workbook.xml.rels", "rId80", "urn:example:relationships/thing", "future/thing1.xml");
  edit("[Content_Types].xml", (text) =>
    text.replace(
      "</Types>",
      '<Override PartName="/xl/charts/chart1.xml" ContentType="application/vnd.openxmlformats-officedocument.drawingml.chart+xml"/>' +
        '<Default Extension="bin" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.printerSettings"/>' +
        '<Override PartName="/xl/future/thing1.xml" ContentType="application/vnd.example.thing+xml"/></Types>',
    ),
  );
  return zipSync(parts);
}

/** The parts of a file as texts; what is no text, as its bytes. */
export function partsOf(bytes: Uint8Array): Record<string, string> {
  return Object.fromEntries(
    Object.entries(unzipSync(bytes))
      .filter(([path]) => !path.endsWith("/"))
      .map(([path, part]) => [path, /\.(xml|rels|vml)$/.test(path) ? strFromU8(part) : String(part)]),
  );
}

/** Has LibreOffice read files and write them in another format; gives what it wrote, by name. */
export function converted(
  files: Readonly<Record<string, Uint8Array>>,
  to: string,
  ending: string,
): Record<string, Uint8Array> {
  const folder = mkdtempSync(join(tmpdir(), "longpoint-"));
  try {
    for (const [name, bytes] of Object.entries(files)) writeFileSync(join(folder, name), bytes);
    const profile = `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`;
    const names = Object.keys(files).map((name) => join(folder, name));
    const out = join(folder, "out");
    const { status, stderr } = spawnSync(
      "soffice",
      ["--headless", profile, "--convert-to", to, "--outdir", out, ...names],
      { encoding: "utf8" },
    );
    if (status !== 0) throw new Error(`soffice ended with ${status}: ${stderr}`);
    return Object.fromEntries(
      Object.keys(files).map((name) => {
        const stem = name.slice(0, name.lastIndexOf("."));
        return [name, new Uint8Array(readFileSync(join(out, `${stem}.${ending}`)))];
      }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What LibreOffice shows in the cells of the first sheet. */
export function shownByOffice(
  files: Readonly<Record<string, Uint8Array>>,
): Record<string, readonly (readonly unknown[])[]> {
  const csv = converted(files, "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,0", "csv");
  return Object.fromEntries(
    Object.entries(csv).map(([name, bytes]) => [name, parseCsv(strFromU8(bytes), { skipEmptyRows: false })]),
  );
}

/** An estimate as LibreOffice writes it: with a note, a list to choose from, a format that depends on values, a link, words in bold, a filter and a name. */
export function byLibreOffice(): Uint8Array {
  return converted({ "estimate.fods": strToU8(FLAT) }, "xlsx", "xlsx")["estimate.fods"]!;
}

const FLAT = `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:styles><style:style style:name="Default" style:family="table-cell"/><style:style style:name="Big" style:family="table-cell" style:parent-style-name="Default"><style:text-properties fo:font-weight="bold"/></style:style></office:styles>
<office:automatic-styles><style:style style:name="T1" style:family="text"><style:text-properties fo:font-weight="bold"/></style:style></office:automatic-styles>
<office:body><office:spreadsheet>
<table:content-validations><table:content-validation table:name="v1" table:condition="of:cell-content-is-in-list(&quot;pine&quot;;&quot;fir&quot;)" table:base-cell-address="Estimate.A5"/></table:content-validations>
<table:table table:name="Estimate">
<table:table-row><table:table-cell office:value-type="string"><text:p>Item</text:p></table:table-cell><table:table-cell office:value-type="string"><text:p>Pieces</text:p></table:table-cell><table:table-cell office:value-type="string"><text:p>Twice</text:p></table:table-cell></table:table-row>
<table:table-row><table:table-cell office:value-type="string"><office:annotation><text:p>Measured on site</text:p></office:annotation><text:p>Boards</text:p></table:table-cell><table:table-cell office:value-type="float" office:value="40"><text:p>40</text:p></table:table-cell><table:table-cell table:formula="of:=[.B2]*2" office:value-type="float" office:value="80"><text:p>80</text:p></table:table-cell></table:table-row>
<table:table-row><table:table-cell office:value-type="string"><text:p><text:span text:style-name="T1">wet</text:span> lumber only</text:p></table:table-cell><table:table-cell office:value-type="float" office:value="6"><text:p>6</text:p></table:table-cell><table:table-cell table:formula="of:=[.B3]*2" office:value-type="float" office:value="12"><text:p>12</text:p></table:table-cell></table:table-row>
<table:table-row><table:table-cell office:value-type="string"><text:p><text:a xlink:href="https://example.org/plans">drawings</text:a></text:p></table:table-cell><table:table-cell office:value-type="float" office:value="24"><text:p>24</text:p></table:table-cell><table:table-cell table:formula="of:=[.B4]*2" office:value-type="float" office:value="48"><text:p>48</text:p></table:table-cell></table:table-row>
<table:table-row><table:table-cell table:content-validation-name="v1" office:value-type="string"><text:p>pine</text:p></table:table-cell><table:table-cell/><table:table-cell table:formula="of:=SUM([.C2:.C4])" office:value-type="float" office:value="140"><text:p>140</text:p></table:table-cell></table:table-row>
<calcext:conditional-formats><calcext:conditional-format calcext:target-range-address="Estimate.B2:Estimate.B4"><calcext:condition calcext:apply-style-name="Big" calcext:value="&gt;20" calcext:base-cell-address="Estimate.B2"/></calcext:conditional-format></calcext:conditional-formats>
</table:table>
<table:named-expressions><table:named-range table:name="Pieces" table:base-cell-address="$Estimate.$A$1" table:cell-range-address="$Estimate.$B$2:.$B$4"/></table:named-expressions>
<table:database-ranges><table:database-range table:name="__Anonymous_Sheet_DB__0" table:target-range-address="Estimate.A1:Estimate.C4" table:display-filter-buttons="true"/></table:database-ranges>
</office:spreadsheet></office:body></office:document>`;

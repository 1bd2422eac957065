import { NAMESPACE } from "../registry/worksheetFunction.ts";

/** The schema that it keeps to; a test validates it, offline. */
export const SCHEMA_VERSION = "1.24";

/**
 * The unified manifest, in JSON, for the Excel of Microsoft 365: the same add-in as the XML manifest, which it takes the place of where both are installed.
 *
 * Older Excel and the Mac need the XML one, so that stays the one to hand out; this is for stores and admin centers that want JSON. It says what manifest.xml
 * says, which a test holds.
 */
export function unifiedManifest(base: string, version: string): object {
  const page = `${base}/pane.html`;
  const icons = [16, 32, 80].map((size) => ({ size, url: `${base}/assets/icon-${size}.png` }));
  const id = "350bc542-6a4b-4d46-98d8-740c1c8a2f72";
  return {
    $schema: `https://developer.microsoft.com/json-schemas/teams/v${SCHEMA_VERSION}/MicrosoftTeams.schema.json`,
    manifestVersion: SCHEMA_VERSION,
    id,
    version,
    name: { short: "Longpoint" },
    description: {
      short: "Worksheet functions and a side pane for framing hip roofs.",
      full: "Worksheet functions and a side pane for framing hip roofs: every jack to the long point before a board is cut.",
    },
    developer: {
      name: "Longpoint",
      websiteUrl: `${base}/help/support.html`,
      privacyUrl: `${base}/help/privacy.html`,
      termsOfUseUrl: `${base}/help/terms.html`,
    },
    icons: { color: "assets/icon-192.png", outline: "assets/icon-outline.png" },
    accentColor: "#214257",
    localizationInfo: { defaultLanguageTag: "en-us" },
    authorization: { permissions: { resourceSpecific: [{ name: "Document.ReadWrite.User", type: "Delegated" }] } },
    extensions: [
      {
        requirements: {
          scopes: ["workbook"],
          capabilities: [
            { name: "SharedRuntime", minVersion: "1.1" },
            { name: "CustomFunctionsRuntime", minVersion: "1.3" },
            { name: "ExcelApi", minVersion: "1.12" },
          ],
        },
        runtimes: [
          {
            id: "PaneRuntime",
            type: "general",
            lifetime: "long",
            code: { page },
            actions: [{ id: "ShowPane", type: "openPage", view: "Pane" }],
            customFunctions: { namespace: { id: NAMESPACE, name: NAMESPACE }, metadataUrl: `${base}/functions.json` },
          },
        ],
        ribbons: [
          {
            contexts: ["default"],
            tabs: [
              {
                builtInTabId: "TabHome",
                groups: [
                  {
                    id: "LongpointGroup",
                    label: "Longpoint",
                    icons,
                    controls: [
                      {
                        id: "PaneButton",
                        type: "button",
                        label: "Frame a hip roof",
                        icons,
                        supertip: {
                          title: "Frame a hip roof",
                          description:
                            "Opens the pane: type the roof, see the jacks, and fill the sheet with a live schedule.",
                        },
                        actionId: "ShowPane",
                      },
                    ],
                  },
                ],
              },
            ],
          },
        ],
        alternates: [{ hide: { customOfficeAddin: { officeAddinId: id } } }],
        getStartedMessages: [
          {
            title: "Longpoint is ready",
            description:
              "Type =RAFTER. in a cell to see the functions, or open the pane from the Home tab to fill a jack schedule.",
            learnMoreUrl: `${base}/help/index.html`,
          },
        ],
      },
    ],
  };
}

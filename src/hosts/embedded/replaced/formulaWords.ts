/** Stands in for what the sheet says about its own functions, a twentieth of its script: nobody sees it before typing a formula (see functionWords.ts). */
export default {};

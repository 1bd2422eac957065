// In the sheet's script, which is loaded by asking for this and does nothing until the sheet itself is asked for.
export {};

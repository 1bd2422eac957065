// How the pane looks, wherever it stands.
import "./pane.css";
import "./controls/layout.css";
import "./controls/fields.css";
import "./controls/folds.css";
import "./controls/card.css";
import "./controls/over.css";
import "./controls/tables.css";
import "./controls/paper.css";

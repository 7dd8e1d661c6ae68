package kingpost.diagram;

/** What lies over what on the sheet, lowest first. */
enum Layer { BACKGROUND, GUIDES, MEMBERS, SUPPORTS, JOINTS, FORCES, WRITING }

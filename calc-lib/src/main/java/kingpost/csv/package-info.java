/**
 * Tables as comma-separated text: a class's answers in, a result sheet out. Knows nothing of what the cells mean.
 * Read {@link kingpost.csv.CsvTable} first.
 *
 * <p>Nothing is null; a cell that is not there is empty text. Source of the form: RFC 4180, with two common
 * departures: a semicolon may separate the cells, and a byte-order mark may come first.
 */
package kingpost.csv;

export { cellAddress, columnLetters, quoteSheet } from '../../workbook/cellAddress';

package pitchboard.app;

import java.nio.file.Path;
import java.util.List;
import pitchboard.documents.csv.BuyingCsv;
import pitchboard.documents.csv.WhatIfCsv;
import pitchboard.documents.json.BuyingJson;
import pitchboard.documents.json.WhatIfJson;
import pitchboard.documents.pdf.PdfInfo;
import pitchboard.documents.pdf.PdfWriter;
import pitchboard.documents.text.BuyingText;
import pitchboard.documents.text.WhatIfText;
import pitchboard.job.Purchase;
import pitchboard.job.WhatIf;
import pitchboard.sheet.Sheet;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;

/** What is to be bought and how it is cut, to be read, to be printed, and for spreadsheets. */
public final class Purchases {
    private Purchases() {}

    public static String text(Purchase purchase) {
        return BuyingText.write(purchase);
    }

    /** The fields are explained in docs/json.md. */
    public static String json(Purchase purchase) {
        return BuyingJson.write(purchase) + "\n";
    }

    /**
     * Writes {@code NAME-buying.pdf}, {@code NAME-boards.csv} and {@code NAME-cuts.csv}; files of these names are
     * replaced, each whole or not at all.
     *
     * @return the files
     * @throws FileTrouble when a file or folder cannot be written
     */
    public static List<Path> write(Purchase purchase, String name, Path folder) throws FileTrouble {
        AtomicWrite.folder(folder);
        Path papers = folder.resolve(name + "-buying.pdf");
        List<Sheet> sheets = purchase.sheets();
        String title = purchase.jobs().get(0).job().brief().title().job();
        AtomicWrite.made(papers, out -> new PdfWriter(new PdfInfo(title, "", "en", "Pitchboard")).write(sheets, out));
        Path boards = folder.resolve(name + "-boards.csv");
        AtomicWrite.madeText(boards, BuyingCsv.boards(purchase));
        Path cuts = folder.resolve(name + "-cuts.csv");
        AtomicWrite.madeText(cuts, BuyingCsv.cuts(purchase));
        return List.of(papers, boards, cuts);
    }

    public static String text(WhatIf whatIf) {
        return WhatIfText.write(whatIf);
    }

    /** The fields are explained in docs/json.md. */
    public static String json(WhatIf whatIf) {
        return WhatIfJson.write(whatIf) + "\n";
    }

    /**
     * Writes {@code NAME-what-if.pdf} and {@code NAME-what-if.csv}; files of these names are replaced, each whole or not
     * at all.
     *
     * @return the files
     * @throws FileTrouble when a file or folder cannot be written
     */
    public static List<Path> write(WhatIf whatIf, String name, Path folder) throws FileTrouble {
        AtomicWrite.folder(folder);
        Path papers = folder.resolve(name + "-what-if.pdf");
        String title = whatIf.base().job().brief().title().job();
        List<Sheet> sheets = whatIf.sheets();
        AtomicWrite.made(papers, out -> new PdfWriter(new PdfInfo(title, "", "en", "Pitchboard")).write(sheets, out));
        Path cases = folder.resolve(name + "-what-if.csv");
        AtomicWrite.madeText(cases, WhatIfCsv.write(whatIf));
        return List.of(papers, cases);
    }
}

package hearthcloth.draw;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Where the stroked outlines of a PDF page really lie, in points of paper, whatever the page's own units are. */
final class StrokedBoxes extends PDFGraphicsStreamEngine {

    private final List<double[]> boxes = new ArrayList<>();
    private final List<Point2D> path = new ArrayList<>();

    private StrokedBoxes(PDPage page) {
        super(page);
    }

    /** Left, foot, width and height of each. */
    static List<double[]> of(PDPage page) throws IOException {
        StrokedBoxes engine = new StrokedBoxes(page);
        engine.processPage(page);
        return List.copyOf(engine.boxes);
    }

    @Override
    public void strokePath() {
        double left = path.stream().mapToDouble(Point2D::getX).min().orElse(0);
        double foot = path.stream().mapToDouble(Point2D::getY).min().orElse(0);
        double right = path.stream().mapToDouble(Point2D::getX).max().orElse(0);
        double top = path.stream().mapToDouble(Point2D::getY).max().orElse(0);
        boxes.add(new double[] {left, foot, right - left, top - foot});
        path.clear();
    }

    @Override
    public void moveTo(float x, float y) {
        path.add(new Point2D.Float(x, y));
    }

    @Override
    public void lineTo(float x, float y) {
        path.add(new Point2D.Float(x, y));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.add(new Point2D.Float(x3, y3));
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.get(path.size() - 1);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.addAll(List.of(p0, p1, p2, p3));
    }

    @Override
    public void fillPath(int windingRule) {
        path.clear();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {
        path.clear();
    }

    @Override
    public void clip(int windingRule) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void shadingFill(COSName name) {}
}

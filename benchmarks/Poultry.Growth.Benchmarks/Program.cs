using System.Globalization;
using BenchmarkDotNet.Running;
using Poultry.Growth.Benchmarks;
using Poultry.Growth.Benchmarks.Ratios;
using Poultry.Growth.Benchmarks.Studies;
using Poultry.Growth.Benchmarks.Studies.Readers;

switch (args)
{
    case ["study", "projection"]:
        ProjectionStudy.Run(batches: 1000);
        break;
    case ["study", "projection", string batches]:
        ProjectionStudy.Run(int.Parse(batches, CultureInfo.InvariantCulture));
        break;
    case ["study", "learning"]:
        Console.Write(LearningStudy.Page());
        break;
    case ["study", "own-farm"]:
        Console.Write(OwnFarmStudy.Page());
        break;
    case ["study", "shape-step"]:
        Console.Write(ShapeStepStudy.Page());
        break;
    case ["study", "farm-past"]:
        Console.Write(FarmPastStudy.Page());
        break;
    case ["study", "readers"]:
        Console.Write(ReaderStudy.Page(AllReaders.All));
        break;
    case ["study", "readers", string name]:
        Console.Write(ReaderStudy.Page([.. AllReaders.All.Where(reader => reader.Name == name)]));
        break;
    case ["study", "lesions"]:
        Console.Write(LesionStudy.Page());
        break;
    case ["check-ratios"]:
        return RatioCheck.Check(Console.Out);
    case ["check-ratios", "once"]:
        RatioCheck.Once(Console.Out);
        break;
    case ["check-ratios", "write"]:
        RatioCheck.Write(Console.Out);
        break;
    case ["alternatives", "write", string folder]:
        Alternatives.Write(folder);
        break;
    case ["alternatives", "table", string folder]:
        Alternatives.Table(folder, Console.Out);
        break;
    case ["scaling"]:
        ManyBatches.Run(Console.Out);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(NinePoints).Assembly).Run(args);
        break;
}

return 0;
